import type { CrossCheckAnswer, SizeAnswer, SizePoint, SizeStaircase } from "@stayput/sim";
import type { Of } from "./headAndFoot.ts";
import { assumedOf } from "./grouped.ts";
import { heading } from "./heading.ts";
import { chanceCell, count, monthName, thousands, whole } from "./numbers.ts";
import { plain } from "./plain.ts";
import { table, type Column } from "./table.ts";
import { item, wrap } from "./wrap.ts";

interface Sheet extends Of {
  /** whose loads and chargers were kept */
  readonly setup: string;
  readonly answer: SizeAnswer;
  readonly handbook: CrossCheckAnswer | null;
  readonly currency: string | null;
  readonly draws: number;
  /** null where the skies were given */
  readonly seed: number | null;
  readonly assumed: readonly string[];
}

const chemistryNames = { agm: "AGM", gel: "gel", flooded: "flooded", lfp: "lithium" } as const;

/** The smallest sizes that last, for a terminal of 80 columns: the pick and why, every corner, a step either way. */
export function sizeText(sheet: Sheet): string {
  const { answer, assumed, handbook } = sheet;
  const charger =
    answer.charger_A === null ? "" : ` A solar charger of ${answer.charger_A} A never holds that array back.`;
  const sections = [
    asked(sheet),
    wrap(`${answer.reason}${charger}`),
    [heading("Smallest that do it"), ...corners(sheet)],
    answer.steps.length === 0 ? [] : [heading("A step either way"), ...answer.steps.flatMap(({ said }) => item(said))],
    handbook === null ? [] : [heading("By the handbook", handbook.standing), ...handbook.said.flatMap(item)],
    [heading("Taken as given"), ...assumedOf(assumed, [{ name: sheet.setup }]), ...item(standing(sheet))],
  ];
  const said = sections.filter((lines) => lines.length > 0).map((lines) => lines.join("\n"));
  return `${said.join("\n\n")}\n`;
}

function asked({ title, customer, place, setup, answer: { nights, chance, months } }: Sheet): string[] {
  const whose = customer === null ? "" : `, for ${plain(customer, 60)}`;
  const when = months.map(monthName).join(", ");
  const what = `What lasts ${count(nights, "night")} with a chance of ${+(100 * chance).toFixed(1)} % in ${when}`;
  return wrap(`${plain(title, 120)}${whose}. ${plain(place, 80)}. ${what}, with the loads of "${plain(setup, 50)}":`);
}

const right = (head: string): Column => ({ head, align: "right" });

/** Every corner of each chemistry's staircase: a smaller bank needs more panels, a smaller array more bank. */
function corners({ answer, draws, currency }: Sheet): string[] {
  const all = answer.staircases.flatMap((staircase: SizeStaircase) => staircase.corners);
  if (all.length === 0) return ["None of the sizes on the shelf."];
  const priced = all.some(({ price }) => price !== null);
  const columns: Column[] = [
    { head: "", align: "left" },
    { head: "bank", align: "left" },
    right("Ah"),
    right("panels, W"),
    right("chance"),
    ...(priced ? [right(`price${currency === null ? "" : `, ${currency}`}`)] : []),
    right("mass, kg"),
    { head: "fits", align: "left" },
  ];
  const same = (a: SizePoint, b: SizePoint | null): boolean =>
    a.chemistry === b?.chemistry && a.bank_Ah === b.bank_Ah && a.array_W === b.array_W;
  const fits = (point: SizePoint): boolean => answer.fitting.some((one) => same(point, one));
  const rows = all.map((point) => [
    same(point, answer.pick) ? ">" : "",
    chemistryNames[point.chemistry],
    String(point.bank_Ah),
    String(point.array_W),
    chanceCell(point.chance, draws),
    ...(priced ? [point.price === null ? "not known" : thousands(point.price)] : []),
    point.mass_kg === null ? "not known" : whole(point.mass_kg),
    fits(point) ? "yes" : "no",
  ]);
  const pick = answer.pick === null ? "" : "> is the pick. ";
  const prices = priced ? "" : " No price is known.";
  return [
    ...table(columns, rows),
    ...wrap(`${pick}Fits: within the roof, the payload and the budget, where the job names them.${prices}`),
  ];
}

const standing = ({ draws, seed }: Sheet): string =>
  `Estimate for planning, not a promise: ${
    seed === null ? `${count(draws, "sky", "skies")} from the file` : `${draws} drawn skies in each month, seed ${seed}`
  }; the trip as travelled, drives and mains included.`;
