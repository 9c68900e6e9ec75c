import type { Keys } from "./fault.ts";
import { oneLine } from "./show.ts";

/** A path as people read it: ["setups", 0, "bank"] is `setups[0].bank`. Odd keys are quoted and cut short. */
export function pathText(keys: Keys): string {
  return keys.reduce<string>((text, key) => {
    if (typeof key === "number") return `${text}[${key}]`;
    if (!/^[A-Za-z_][A-Za-z0-9_]{0,59}$/.test(key)) return `${text}[${oneLine(key)}]`;
    return text === "" ? key : `${text}.${key}`;
  }, "");
}
