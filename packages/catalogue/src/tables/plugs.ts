import type { Row } from "../row.ts";

/** A plug, socket or joint on a charge path, by class. */
export interface PlugRow extends Row {
  /** what it carries for hours */
  readonly limit_A: number;
  /** both poles, in good order */
  readonly resistance_mOhm: number;
  /** what to know before relying on it; null: nothing out of the ordinary */
  readonly caution: string | null;
}

const memory = {
  source: "standard or typical data sheet, resistance of contacts in good order",
  standing: "from memory",
  caution: null,
} as const;
const practice = { source: "what installers rely on", standing: "common practice, no source", caution: null } as const;

/** Plugs by class, weakest first. Worn or corroded contacts have many times the resistance. */
export const plugs: readonly PlugRow[] = [
  {
    id: "lighter",
    name: "Lighter socket (ISO 4165 and the like)",
    limit_A: 10,
    resistance_mOhm: 15,
    ...practice,
    caution: "shakes loose and heats; not for charging a bank",
  },
  {
    id: "lamp-pin",
    name: "Lamp-plug pin, 7-pin trailer plug",
    limit_A: 15,
    resistance_mOhm: 4,
    ...practice,
    caution: "meant for lamps: a large charge feed belongs on its own pair",
  },
  { id: "twelve-n", name: "7-pin 12N or 12S contact (ISO 1724, ISO 3732)", limit_A: 15, resistance_mOhm: 4, ...memory },
  { id: "thirteen-pin", name: "13-pin charge contact (ISO 11446)", limit_A: 20, resistance_mOhm: 3, ...memory },
  { id: "heavy-flat-pin", name: "12-pin flat plug, heavy contact", limit_A: 35, resistance_mOhm: 1.5, ...practice },
  {
    id: "genderless-50",
    name: "50 A two-pole genderless connector",
    limit_A: 50,
    resistance_mOhm: 0.5,
    ...practice,
    caution: "in 75 °C it carries 31 A on 12 AWG, 37 A on 10, 46 A on 8 (maker's derating chart)",
  },
  { id: "genderless-120", name: "120 A two-pole genderless connector", limit_A: 120, resistance_mOhm: 0.25, ...memory },
  { id: "genderless-175", name: "175 A two-pole genderless connector", limit_A: 175, resistance_mOhm: 0.2, ...memory },
  {
    id: "lug",
    name: "Pair of bolted lugs",
    limit_A: 200,
    resistance_mOhm: 0.1,
    ...memory,
    caution: "if crimped with the right tool and tight",
  },
];
