import type { Check } from "./compare.ts";
import { checks as array } from "./array.ts";
import { checks as bank } from "./bank.ts";
import { checks as cable } from "./cable.ts";
import { checks as charging } from "./charging.ts";
import { checks as climate } from "./climate.ts";
import { checks as loads } from "./loads.ts";
import { checks as sizing } from "./sizing.ts";
import { checks as skies } from "./skies.ts";
import { checks as practice } from "./practice.ts";
import { checks as solar } from "./solar.ts";
import { checks as stay } from "./stay.ts";

/** Every topic held against the world outside: one file a topic, each exporting its checks. */
export const topics: readonly { readonly name: string; readonly checks: readonly Check[] }[] = [
  { name: "sun", checks: solar },
  { name: "skies", checks: skies },
  { name: "array", checks: array },
  { name: "climate", checks: climate },
  { name: "loads", checks: loads },
  { name: "cable", checks: cable },
  { name: "charging", checks: charging },
  { name: "bank", checks: bank },
  { name: "stay", checks: stay },
  { name: "sizing", checks: sizing },
  { name: "practice", checks: practice },
];
