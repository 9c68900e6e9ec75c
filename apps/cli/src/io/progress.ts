import type { InParts } from "@stayput/sim";
import type { Options } from "../options.ts";
import type { Io } from "./streams.ts";

const EVERY_ms = 2000; // work that ends sooner is not worth a word

/** Tells how far long work is, a line every two seconds, where somebody watches or `--progress` asks for it. */
export function teller({ progress }: Pick<Options, "progress">, io: Io): (said: () => string) => void {
  if (!progress && !io.watched) return () => undefined;
  let last_ms = performance.now();
  return (said) => {
    if (performance.now() - last_ms < EVERY_ms) return;
    last_ms = performance.now();
    io.say(said());
  };
}

/** The whole of an answer that comes in parts, progress told on the way. */
export async function worked<Answer>(
  parts: InParts<Answer>,
  options: Pick<Options, "progress">,
  io: Io,
): Promise<Answer> {
  const { watched } = await import("@stayput/sim");
  const tell = teller(options, io);
  const onPart = ({ progress }: { readonly progress: number }): void =>
    tell(() => `${Math.floor(100 * progress)} % done`);
  return watched(parts, { onPart });
}
