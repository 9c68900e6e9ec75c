/** Ratings that fuses are sold in [A]. Common practice: blade sizes to 40 A, bolted sizes above. */
export const fuseSizes_A: readonly number[] = [
  3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 500,
];

/** A fuse is chosen this much above the current that runs for hours. Common practice, no source. */
export const fuseMargin = 1.25;

/** A kind of fuse and the fault that it can still open. */
export interface FuseKind {
  readonly name: string;
  readonly smallest_A: number;
  readonly largest_A: number;
  readonly interrupts_A: number;
  readonly most_V: number;
  readonly standing: string;
}

const memory = "typical, from memory: read it off the fuse's own data sheet";

/** Weakest first. */
export const fuseKinds: readonly FuseKind[] = [
  { name: "blade fuse (ISO 8820-3)", smallest_A: 1, largest_A: 40, interrupts_A: 1000, most_V: 32, standing: memory },
  {
    name: "bolted strip fuse SF 30 (ISO 8820-5)",
    smallest_A: 30,
    largest_A: 200,
    interrupts_A: 2000,
    most_V: 32,
    standing: memory,
  },
  {
    name: "bolted strip fuse SF 51 (ISO 8820-5)",
    smallest_A: 60,
    largest_A: 500,
    interrupts_A: 2000,
    most_V: 32,
    standing: memory,
  },
  { name: "type ANL strip fuse", smallest_A: 35, largest_A: 500, interrupts_A: 6000, most_V: 32, standing: memory },
  {
    name: "class T fuse (UL 248-15)",
    smallest_A: 1,
    largest_A: 600,
    interrupts_A: 20000,
    most_V: 125,
    standing: memory,
  },
];

/** How near to the battery its fuse stands. */
export const fuseDistance = {
  most_mm: 200,
  enclosedMost_m: 1,
  text: "within 200 mm of the battery, or directly outside its compartment, or under 1 m where the cable is suitably enclosed",
  source: "industry guidance page to AS/NZS 3001.2:2022 section 5.4 (the standard itself not consulted)",
  standing: "published guidance; local codes decide",
} as const;
