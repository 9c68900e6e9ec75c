import type { Check } from "./compare.ts";
import { checks as loads } from "./loads.ts";

/** Every topic held against the world outside: one file a topic, each exporting its checks. */
export const topics: readonly { readonly name: string; readonly checks: readonly Check[] }[] = [
  { name: "loads", checks: loads },
];
