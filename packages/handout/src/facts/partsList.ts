import type { Feed, PathPiece, Setup } from "@stayput/sim";
import { sayNumber, sayPercent } from "@stayput/charts";
import { bounded } from "../words/bounded.ts";
import { massChangeSaid, priceSaid } from "../words/figures.ts";
import type { Option } from "./options.ts";

/** One line of a bill of materials: a part, and for each option what it is, a line each. */
export interface PartRow {
  readonly part: string;
  readonly cells: readonly (readonly string[])[];
}

export interface Context {
  readonly currency: string | null;
  readonly locale: string;
}

type Lines = (option: Option, context: Context, options: readonly Option[]) => string[];

const rows: readonly (readonly [part: string, lines: Lines])[] = [
  ["Bank", ({ setup }, { locale }) => bankSaid(setup, locale)],
  ["Panels", ({ setup }, { locale }) => panelsSaid(setup, locale)],
  ["Solar charger", ({ setup: { solarCharger: one } }) => (one ? [`${one.kind.toUpperCase()}, ${one.rated_A} A`] : [])],
  ["Charge on the road", ({ setup }) => feedSaid(setup.feed)],
  ["Plugs on the run", ({ setup }) => plugsSaid(setup.feed?.path ?? [])],
  ["Inverter", ({ setup: { inverter: one } }) => (one ? [`${one.rated_W} W, ${one.surge_W} W to start`] : [])],
  ["Mains charger", ({ setup: { mainsCharger: one } }) => (one ? [`${one.rated_A} A`] : [])],
  ["Loads", loadsSaid],
  ["Price, mass", costSaid],
];

/** The bill of materials, a column an option. What an option has not is an empty cell. */
export const partsList = (options: readonly Option[], context: Context): PartRow[] =>
  rows
    .map(([part, lines]) => ({ part, cells: options.map((option) => lines(option, context, options)) }))
    .filter(({ cells }) => cells.some((cell) => cell.length > 0));

const chemistryNames = { agm: "AGM", gel: "gel", flooded: "flooded lead-acid", lfp: "lithium (LFP)" } as const;

function bankSaid({ bank }: Setup, locale: string): string[] {
  const tired = bank.condition < 1 ? `, ${sayPercent(bank.condition, locale)} left` : "";
  const size = `${sayNumber(bank.capacity_Ah, locale)} Ah ${chemistryNames[bank.chemistry]}, ${bank.nominal_V} V${tired}`;
  return [size, ...(bank.where === "outside" ? ["stands outside"] : [])];
}

const mounts = { flush: "flush", free: "stood free", bonded: "bonded" } as const;

/** A line for each way of mounting: "250 + 200 W, flush". */
const panelsSaid = ({ arrays }: Setup, locale: string): string[] =>
  (["flush", "free", "bonded"] as const).flatMap((mount) => {
    const watts = arrays.filter((array) => array.mount === mount).map((array) => sayNumber(array.watts, locale));
    return watts.length === 0 ? [] : [`${watts.join(" + ")} W, ${mounts[mount]}`];
  });

function feedSaid(feed: Feed | null): string[] {
  if (feed === null) return [];
  if (feed.kind === "relay") return ["relay, straight to the bank"];
  return [`${feed.count > 1 ? `${feed.count} × ` : ""}DC-DC charger, ${feed.rated_A} A`];
}

const plugsSaid = (path: readonly PathPiece[]): string[] =>
  path.flatMap((piece) => (piece.kind === "plug" ? [`${piece.limit_A} A, ${bounded(piece.name ?? "plug", 24)}`] : []));

/** Left empty where nothing is said of either. */
function costSaid({ setup, index }: Option, { currency, locale }: Context): string[] {
  const price = setup.price > 0 ? [priceSaid(setup.price, currency, locale)] : [];
  const mass = index > 0 || setup.mass_kg !== 0 ? [massChangeSaid(setup.mass_kg, locale)] : [];
  const said = [...price, ...mass].join(", ");
  return said === "" ? [] : [said];
}

/** What runs otherwise than with the first option. */
function loadsSaid({ setup, index }: Option, _context: Context, [first]: readonly Option[]): string[] {
  if (index === 0 || first === undefined) return [];
  const ids = (loads: Setup["loads"]) => new Set(loads.map(({ id }) => id));
  const [before, after] = [ids(first.setup.loads), ids(setup.loads)];
  return [
    ...first.setup.loads.filter(({ id }) => !after.has(id)).map(({ name }) => `less ${bounded(name, 30)}`),
    ...setup.loads.filter(({ id }) => !before.has(id)).map(({ name }) => `with ${bounded(name, 30)}`),
  ];
}
