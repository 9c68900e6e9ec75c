import type { Skies, Trip } from "@stayput/sim";
import { Misuse } from "../faults.ts";
import type { Options } from "../options.ts";
import { readSkies } from "./readSkies.ts";
import { readText } from "./readText.ts";
import type { Io } from "./streams.ts";

const DRAWS = 200;

/**
 * The skies that a command asks for: drawn from a seed, or rows of a file, as many as `--draws` where that is given.
 *
 * @param operand of the job, since standard input can hold one thing only
 * @param trip whose nights a row of a file must cover
 */
export async function skiesOf(
  operand: string,
  { trip }: { readonly trip: Pick<Trip, "nights"> },
  options: Options,
  io: Io,
): Promise<Skies> {
  const { seed, draws, skies } = options;
  if (skies === null) return { seed, draws: draws ?? DRAWS };
  if (io.skies === undefined && skies === "-" && operand === "-")
    throw new Misuse("standard input holds the job or the skies, not both");
  const rows = readSkies(skies, io.skies ?? (await readText(skies, io.stdin)), trip.nights + 1);
  return { rows: rows.slice(0, draws ?? rows.length) };
}
