import type { ConductorSize, FuseAdvice, RunAnswer } from "@stayput/sim";
import { sayNumber, sayPercent } from "@stayput/charts";
import { bounded } from "../words/bounded.ts";
import { ampsSaid } from "../words/figures.ts";
import type { Option } from "./options.ts";
import type { PartRow } from "./partsList.ts";

const kindNames = { charge: "Charge run", inverter: "Inverter leads", solar: "Panels to charger", "fridge-feed": "" };

/** Every run of wire of an option, the charge run first. */
const runsOf = ({ wired }: Option): RunAnswer[] =>
  wired === null ? [] : [...(wired.charge === null ? [] : [wired.charge]), ...wired.others, ...wired.fridges];

const nameOf = (run: RunAnswer): string => kindNames[run.kind] || bounded(run.name, 40);

/**
 * What to pull and how to fuse it, run by run: metres of single conductor and its size, what it carries, the fuses. Two
 * runs of one name stand in one cell.
 */
export function wireRows(options: readonly Option[], locale: string): PartRow[] {
  const names = [...new Set(options.flatMap((option) => runsOf(option).map(nameOf)))];
  return names.map((part) => ({
    part,
    cells: options.map((option) =>
      runsOf(option)
        .filter((run) => nameOf(run) === part)
        .flatMap((run) => [...wireLines(run, locale), ...fuseLines(run.fuses)]),
    ),
  }));
}

function wireLines(run: RunAnswer, locale: string): string[] {
  const { use, length_m, given, running_A, thinnest_mm2, dropShare, sizes } = run;
  const after = sizes.find(({ purpose }) => purpose === "stage after");
  const five = sizes.find(({ purpose }) => purpose === "5 % drop");
  const length = `${given ? "" : "about "}${sayNumber(2 * length_m, locale, 1)}\u00a0m`;
  const amps = `${ampsSaid(running_A, locale)}\u00a0A`;
  const now =
    thinnest_mm2 === null
      ? []
      : [`${amps}, now ${sayNumber(thinnest_mm2, locale, 1)}\u00a0mm²${lostSaid(dropShare, locale)}`];
  const thinner = five && five.standard_mm2 !== use?.standard_mm2 ? [`5\u00a0%: ${sizeSaid(five)}`] : [];
  return [
    use === null || use.standard_mm2 === null ? `${length}: no size will do` : `${length}, ${sizeSaid(use)}`,
    ...(now.length > 0 ? [...now, ...thinner] : [[amps, ...thinner].join("; ")]),
    ...(after ? [`stage after: ${sizeSaid(after)}`] : []),
  ];
}

const lostSaid = (share: number | null, locale: string): string =>
  share === null || share < 0.005 ? "" : `, ${sayPercent(share, locale)} lost`;

/** "16 mm² (6)": the gauge in brackets. */
const sizeSaid = ({ standard_mm2, awg }: ConductorSize): string => {
  if (standard_mm2 === null) return "no size will do";
  return `${standard_mm2}\u00a0mm²${awg === null ? "" : `\u00a0(${awg.replace(" AWG", "")})`}`;
};

/** A line a fuse, those for the wire as it is before the one that goes with a thicker wire. */
function fuseLines(fuses: readonly FuseAdvice[]): string[] {
  return ([null, "as it is", "once pulled"] as const).flatMap((wanted) =>
    endLines(fuses.filter(({ cable }) => cable === wanted)).map((line) =>
      wanted === null ? line : `${wanted}: ${line}`,
    ),
  );
}

/** A line a fuse; one for both ends where they are alike. */
function endLines(fuses: readonly FuseAdvice[]): string[] {
  const said = fuses.map(({ rated_A, kinds: [kind] }) =>
    rated_A === null ? null : `fuse ${rated_A}\u00a0A${kind === undefined ? "" : ` ${kindShort(kind)}`}`,
  );
  if (said.length === 2 && said[0] === said[1] && said[0]) return [`${said[0]}, both ends`];
  return fuses.map(({ end }, i) => {
    const where = (end.split(",")[0] ?? end).replace(/^the |'s battery$/g, "");
    return said[i] ? `${said[i]}, ${where}` : `no fuse fits, ${where}: thicker cable first`;
  });
}

/** "class T fuse (UL 248-15)" as "class T". */
const kindShort = (kind: string): string => kind.replace(/ fuse.*$/, "");

/** What a dead short could draw at the batteries, least to most [kA]; null where no fuse stands at one. */
export function faultRange_kA(options: readonly Option[]): readonly [least: number, most: number] | null {
  const all = options
    .flatMap(runsOf)
    .flatMap(({ fuses }) => fuses.flatMap(({ fault_A }) => (fault_A === null ? [] : [fault_A / 1000])));
  return all.length === 0 ? null : [Math.min(...all), Math.max(...all)];
}
