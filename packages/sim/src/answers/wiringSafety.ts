import { fuseDistance } from "../feed/index.ts";
import type { Setup } from "../study.ts";
import type { SafetyRow, StandardRow } from "./wiringTypes.ts";

type Row = SafetyRow & { readonly when: (setup: Setup) => boolean };

const practice = "common practice, no source";
const always = (): boolean => true;
const usesGas = ({ loads }: Setup): boolean =>
  loads.some((load) => load.kind === "absorption-fridge" && load.burns === "gas");
const hasMains = ({ inverter, mainsCharger }: Setup): boolean => inverter !== null || mainsCharger !== null;

/** Each caution once, where it matters. None states a legal limit: local codes decide. */
const rows: readonly Row[] = [
  {
    id: "isolate",
    where: "before the spanner",
    text: "Isolate every source: bank, vehicle battery, panels (cover them) and mains. Negative off first, on last.",
    standing: practice,
    when: always,
  },
  {
    id: "jewellery",
    where: "at the battery",
    text: "Rings, watches and chains off; insulated tools; eye protection. A bank can weld a spanner to its post.",
    standing: practice,
    when: always,
  },
  {
    id: "fuse-distance",
    where: "at every battery, and so at both ends of a battery-to-battery run",
    text: `A fuse ${fuseDistance.text}. The wire before the fuse is protected by nothing.`,
    standing: `${fuseDistance.standing}: ${fuseDistance.source}`,
    when: always,
  },
  {
    id: "mains",
    where: "inverter and mains charger",
    text: "Fixed mains wiring, earthing, residual-current protection and changeover are a licensed electrician's in most places.",
    standing: "from memory; local codes decide",
    when: hasMains,
  },
  {
    id: "gas",
    where: "fridge on gas",
    text: "Gas pipe, flue and any disconnection are a licensed gas fitter's. No spark, relay or battery vent in a gas locker.",
    standing: "from memory; local codes decide",
    when: usesGas,
  },
  {
    id: "lithium-place",
    where: "lithium bank",
    text: "Where a lithium bank may stand (living space, sealed or vented box, outside access) is regulated in some countries; ask before it is placed. Keep it from heat, fix it against a crash, and charge it only above freezing.",
    standing: "from memory; local codes and the maker's manual decide",
    when: ({ bank }) => bank.chemistry === "lfp",
  },
  {
    id: "hydrogen",
    where: "lead-acid bank",
    text: "Lead-acid gives off hydrogen when charged: vent flooded cells to the outside, and give sealed ones free air.",
    standing: practice,
    when: ({ bank }) => bank.chemistry !== "lfp",
  },
  {
    id: "crimp",
    where: "every joint",
    text: "Crimp with the tool made for the lug, pull-test, and feel each joint warm after ten minutes at full current.",
    standing: practice,
    when: always,
  },
];

/** The cautions that a setup calls for. */
export const safety = (setup: Setup): SafetyRow[] =>
  rows.filter((row) => row.when(setup)).map(({ id, where, text, standing }) => ({ id, where, text, standing }));

const memory = "from memory; not consulted, check the edition in force where the van is registered";

/** Which standard covers what: where to look, not what they say. */
export const standards: readonly StandardRow[] = [
  {
    name: "AS/NZS 3001.2",
    covers: "electrical installations in caravans and camper vans (Australia, New Zealand)",
    standing: memory,
  },
  { name: "AS/NZS 3000", covers: "fixed mains wiring in general (Australia, New Zealand)", standing: memory },
  { name: "SANS 10142-1", covers: "wiring of premises, caravans included (South Africa)", standing: memory },
  {
    name: "EN 1648-1, EN 1648-2",
    covers: "12 V installations in caravans and motor caravans (Europe)",
    standing: memory,
  },
  { name: "IEC 60364-7-721", covers: "mains installations in caravans and motor caravans", standing: memory },
  {
    name: "NFPA 1192, NEC article 551",
    covers: "recreational vehicles: 12 V and mains (North America)",
    standing: memory,
  },
  {
    name: "ABYC E-11",
    covers: "dc and ac systems on boats: the ampacity and volt-drop tables used here",
    standing: "published tables, met through reproductions",
  },
  {
    name: "IEC 60228",
    covers: "conductor classes and their greatest resistance",
    standing: "published tables, met through reproductions",
  },
  { name: "ISO 8820", covers: "fuse-links for road vehicles", standing: memory },
  { name: "ISO 1724, ISO 11446, SAE J2863", covers: "trailer plugs", standing: memory },
];
