import type { CompareAnswer, ComparedSetup } from "@stayput/sim";
import { gainSaid } from "./gainSaid.ts";
import { standing, titled, type Of } from "./headAndFoot.ts";
import { assumedOf, grouped } from "./grouped.ts";
import { heading, lettered, letterOf } from "./heading.ts";
import { lasting } from "./lasting.ts";
import { hoursSaid, percent, signed, thousands, whole } from "./numbers.ts";
import { plain } from "./plain.ts";
import { table, type Column } from "./table.ts";
import { item, wrap } from "./wrap.ts";

interface Sheet extends Of {
  readonly answer: CompareAnswer;
  readonly currency: string | null;
  readonly assumed: readonly string[];
}

/** Setups side by side under the same skies, for a terminal of 80 columns. */
export function compareText(sheet: Sheet): string {
  const { answer, currency, assumed } = sheet;
  const [first, ...others] = answer.setups;
  const against = `A (${plain(first?.name ?? "", 40)})`;
  const gains = others.map((setup, i) =>
    wrap(gainSaid(setup, against, answer.horizon_days, currency), lettered(i + 1)),
  );
  const sections = [
    titled(sheet, answer.nights),
    ...gains,
    [heading("How long they last"), ...lasting(answer)],
    [heading("What they take"), ...takes(answer.setups, currency)],
    [heading("What flattens them"), ...flattens(answer.setups)],
    cautions(answer.setups),
    [heading("Taken as given"), ...assumedOf(assumed, answer.setups), ...item(standing(answer))],
  ];
  const said = sections.filter((lines) => lines.length > 0).map((lines) => lines.join("\n"));
  return `${said.join("\n\n")}\n`;
}

const right = (head: string): Column => ({ head, align: "right" });
const left = (head: string): Column => ({ head, align: "left" });

/** Price, mass, and how long the vehicle takes to put back what was used. */
function takes(setups: readonly ComparedSetup[], currency: string | null): string[] {
  const payload = setups.some(({ payloadLeft_kg }) => payloadLeft_kg !== null);
  const columns = [
    left(""),
    left("setup"),
    right(`price\n${currency ?? ""}`),
    right("mass\nkg"),
    ...(payload ? [right("payload\nleft, kg")] : []),
    right("driving\nto 80 %"),
    right("to full"),
  ];
  const rows = setups.map(({ name, price, mass_kg, payloadLeft_kg, refill_h }, i) => [
    letterOf(i),
    plain(name, 24),
    thousands(price),
    signed(mass_kg),
    ...(payload ? [payloadLeft_kg === null ? "" : whole(payloadLeft_kg)] : []),
    refill(refill_h.to80),
    refill(refill_h.toFull),
  ]);
  return [...table(columns, rows), "Driving is from the reserve, without sun, the loads of a drive running."];
}

const refill = (hours: number | null): string => (hours === null ? "not in 48 h" : hoursSaid(hours));

function flattens(setups: readonly ComparedSetup[]): string[] {
  const columns = [left(""), left("biggest user"), right("of use"), right("use\nWh/day"), right("sun unused\nWh/day")];
  const rows = setups.map(({ flattenedBy, use_Wh_day, sun_Wh_day }, i) => [
    letterOf(i),
    flattenedBy === null ? "nothing" : plain(flattenedBy.name, 36),
    flattenedBy === null ? "" : percent(flattenedBy.share),
    whole(use_Wh_day),
    whole(sun_Wh_day.unused),
  ]);
  return table(columns, rows);
}

/** Each caution once, with the letters of the setups that it is for. */
function cautions(setups: readonly ComparedSetup[]): string[] {
  const lines = grouped(setups.map((setup) => setup.cautions.map(({ text }) => text)));
  return lines.length === 0 ? [] : [heading("What to mind"), ...lines];
}
