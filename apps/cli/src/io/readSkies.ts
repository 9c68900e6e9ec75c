import { Refusal } from "../faults.ts";

const MOST_TOLD = 20;
/** Rows of one file: as many skies as `--draws` allows. */
export const MOST_SKIES = 5000;

/**
 * Daily clearness (global on the level over extraterrestrial, 0 to 1) from CSV: a row a sky, a column a day from the day
 * of arrival on. A first row of words is passed over.
 *
 * @param days columns that there must be at least: the nights of the trip and one, as arrival is in the afternoon
 * @throws Refusal with every fault, by line and column
 */
export function readSkies(file: string, text: string, days: number): number[][] {
  const texts = text.split(/\r?\n/u);
  const parted = texts.findIndex(otherwiseParted);
  if (parted >= 0) throw new Refusal(file, [wrongSign(parted + 1)]);
  const lines = texts.map((row, i) => ({ line: i + 1, cells: row.split(",") }));
  const rows = lines.filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));
  const [first] = rows;
  const data = first?.cells.every((cell) => Number.isNaN(numberOf(cell))) === true ? rows.slice(1) : rows;
  const faults = [
    ...countFaults(data.length),
    ...data.flatMap((row) => rowFaults(row, data[0]?.cells.length ?? 0, days)),
  ];
  if (faults.length > MOST_TOLD)
    faults.splice(MOST_TOLD, Infinity, { message: `and ${faults.length - MOST_TOLD} faults more` });
  if (faults.length > 0) throw new Refusal(file, faults);
  return data.map(({ cells }) => cells.map(numberOf));
}

/** Whether a text holds skies for some trip. @throws Refusal with every fault */
export const checkSkiesText = (file: string, text: string): void => void readSkies(file, text, 1);

type Told = Refusal["faults"][number];
interface Row {
  readonly line: number;
  readonly cells: readonly string[];
}

/** NaN for anything but a plain number; an empty cell is not 0. */
const numberOf = (cell: string): number => (cell.trim() === "" ? NaN : Number(cell));

/** A row of numbers with semicolons, tabs or spaces between, as spreadsheets write it where the comma is a decimal sign. */
function otherwiseParted(row: string): boolean {
  const cells = row.split(/[;\s]/u).filter((cell) => cell !== "");
  return (
    cells.length > 1 && cells.every((cell) => /^[\d.](?:.*[\d.])?$/u.test(cell) && Number(cell.replace(",", ".")) >= 0)
  );
}

const wrongSign = (line: number): Told => ({
  line,
  message: "semicolons, tabs or spaces part the days; accepted is a comma between days and a point for decimals",
});

function countFaults(rows: number): Told[] {
  if (rows >= 1 && rows <= MOST_SKIES) return [];
  return [{ message: `${rows} rows were given; accepted are 1 to ${MOST_SKIES}, a row a sky` }];
}

function rowFaults({ line, cells }: Row, width: number, days: number): Told[] {
  const wrong = cells.flatMap((cell, i) => {
    const value = numberOf(cell);
    if (value >= 0 && value <= 1) return [];
    const given = JSON.stringify(cell.trim().slice(0, 30));
    return [{ line, message: `day ${i + 1}: ${given} was given; accepted is a clearness from 0 to 1` }];
  });
  if (cells.length !== width)
    wrong.unshift({ line, message: `${cells.length} days were given; the first sky has ${width}` });
  else if (width < days)
    wrong.unshift({ line, message: `${width} days were given; the trip needs ${days}, the day of arrival included` });
  return wrong;
}
