import type { Setup } from "../study.ts";
import type { ChecklistRow } from "./wiringTypes.ts";

/** What a job has that a row may turn on. */
interface JobFacts {
  /** the run has a plug in it, so something is towed */
  readonly towed: boolean;
  readonly converter: boolean;
  readonly variableVoltage: boolean;
  readonly threeWay: boolean;
  readonly compressorFridge: boolean;
  /** another setup of the job asks more of the run */
  readonly grows: boolean;
}

type Row = ChecklistRow & { readonly when: (facts: JobFacts) => boolean };

const practice = "common practice, no source";
const memory = "from memory; check against local rules";
const towed = ({ towed }: JobFacts): boolean => towed;

/** What is cheap to pull while the trim is off and dear afterwards. */
const rows: readonly Row[] = [
  {
    id: "second-charge-pair",
    item: "A second heavy pair beside the charge pair, or the size that the next stage asks",
    reason: "The labour is in the pulling; a bigger bank or a second converter will want it.",
    standing: practice,
    when: ({ grows, converter }) => grows || converter,
  },
  {
    id: "ignition-signal",
    item: "An ignition signal wire to the DC-DC charger",
    reason: "A variable-voltage alternator sits too low for a charger to tell by volts that the engine runs.",
    standing: practice,
    when: ({ converter, variableVoltage }) => converter && variableVoltage,
  },
  {
    id: "brake-controller",
    item: "Brake controller feed: its own fused supply, the brake output wire to the plug, and a stop-lamp signal",
    reason: "Electric brakes draw several amps for as long as the pedal is down; a tapped lamp circuit cannot give it.",
    standing: memory,
    when: towed,
  },
  {
    id: "stability-control",
    item: "Stability-control feed on its own keyed plug, fused at the battery",
    reason: "It must never share the charge pair's drop or its fuse, and must not fit the charge socket by mistake.",
    standing: practice,
    when: towed,
  },
  {
    id: "twelve-pin",
    item: "A 12-pin flat socket at the car rather than a 7-pin",
    reason:
      "A flat 7-pin plug goes into a 12-pin socket, not the other way about; the added pins carry charge and fridge feeds. Elsewhere the 13-pin round socket takes a 7-pin plug by adapter only.",
    standing: "from memory; which plug is usual differs by country",
    when: towed,
  },
  {
    id: "heavy-connector",
    item: "The charge feed on its own two-pole heavy connector, not through a lamp-plug pin",
    reason: "A lamp-plug pin carries about 15 A; the rest becomes heat in the plug.",
    standing: practice,
    when: towed,
  },
  {
    id: "fridge-own-pair",
    item: "The three-way fridge's element on its own pair, live only with the ignition",
    reason:
      "It takes 12 to 15 A the whole way and pulls down whatever shares its wire; left on, it empties a bank in hours.",
    standing: practice,
    when: ({ threeWay }) => threeWay,
  },
  {
    id: "fridge-feed",
    item: "The fridge on its own pair straight from the bank's fuse block, with a bolted or locking connector",
    reason: "Its cut-out looks at the volts at the fridge; lighter sockets and shared wires cost it most of a volt.",
    standing: practice,
    when: ({ compressorFridge }) => compressorFridge,
  },
  {
    id: "reversing-camera",
    item: "Reversing-camera cable and its own screened plug",
    reason: "Video needs an unbroken screen; it cannot be added through the lamp plug later.",
    standing: practice,
    when: towed,
  },
  {
    id: "temperature-sense",
    item: "Battery temperature and voltage sense leads to the chargers",
    reason: "Charging volts belong to the battery's temperature and posts, not to the far end of a loaded wire.",
    standing: practice,
    when: () => true,
  },
  {
    id: "sleeve-and-glands",
    item: "Sleeve, grommets and glands wherever the loom passes metal, and a drawstring left in the run",
    reason: "A chafed unfused wire is the usual start of a fire; the string saves the next pull.",
    standing: practice,
    when: () => true,
  },
];

/** The rows that a setup calls for. @param grows another setup of the job asks more of the run */
export function checklist(setup: Setup, grows: boolean): ChecklistRow[] {
  if (setup.feed === null) return [];
  const facts = factsOf(setup, grows);
  return rows
    .filter((row) => row.when(facts))
    .map(({ id, item, reason, standing }) => ({ id, item, reason, standing }));
}

function factsOf({ feed, loads }: Setup, grows: boolean): JobFacts {
  return {
    towed: feed?.path.some(({ kind }) => kind === "plug") ?? false,
    converter: feed?.kind === "converter",
    variableVoltage: (feed?.source.low_V ?? null) !== null,
    threeWay: loads.some(({ kind }) => kind === "absorption-fridge"),
    compressorFridge: loads.some(({ kind }) => kind === "compressor-fridge"),
    grows,
  };
}
