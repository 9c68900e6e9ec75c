import { sayPercent } from "@stayput/charts";
import { credits } from "@stayput/catalogue";
import type { Job } from "@stayput/job";
import type { Handover } from "../handover.ts";
import { bounded } from "../words/bounded.ts";
import { monthDaySaid } from "../words/figures.ts";
import { gathered, type Option } from "./options.ts";

/** Room for notes in the small print, in characters. */
const notesRoom = 420;

/** What the answer rests on, the sources last; of the notes as many as there is room for. */
export function assumptions(handover: Handover, options: readonly Option[]): string {
  const notes = notesSaid(handover.notes, options);
  const kept = notes.filter((_, i) => notes.slice(0, i + 1).join(" ").length <= notesRoom);
  const left = notes.length - kept.length;
  const more = left === 0 ? [] : [`${left} more ${left === 1 ? "assumption is" : "assumptions are"} not printed.`];
  return [...tripSaid(handover), ...kept, ...more, ...sources(handover.job)].join(" ");
}

const degrees = (value: number, [positive, negative]: readonly [string, string]): string =>
  `${Math.abs(value).toFixed(1)}° ${value < 0 ? negative : positive}`;

/** A place by name with its coordinates: "Upington, 28.4° S 21.3° E". */
export function placeSaid({ name, latitude_deg, longitude_deg }: Handover["place"]): string {
  const east = longitude_deg === null ? "" : ` ${degrees(longitude_deg, ["E", "W"])}`;
  return `${bounded(name, 40)}, ${degrees(latitude_deg, ["N", "S"])}${east}`;
}

function tripSaid({ place, study: { trip }, explained, locale = "en" }: Handover): string[] {
  const { draws, seed, horizon_days } = explained;
  const skies = seed === null ? `${draws} skies from a file` : `${draws} skies drawn about the month's mean`;
  return [
    `${placeSaid(place)}; arrival ${monthDaySaid(trip.month, trip.day, locale)} at 15:00 with the bank at ${sayPercent(trip.startCharge, locale)}.`,
    "Days are parked from arrival until loads drop; chances are of the trip as described, its driving and mains included.",
    `${skies}, looked at for ${Math.floor(horizon_days)} days; “eight in ten” leaves out the dullest tenth and the brightest.`,
    ...travelSaid({ drives: trip.drives, mains: trip.mains, shade: trip.shade }),
  ];
}

function travelSaid({ drives, mains, shade }: Pick<Handover["study"]["trip"], "drives" | "mains" | "shade">): string[] {
  const every = (n: number) => (n === 1 ? "every day" : `every ${n} days`);
  const parts = [
    drives === null ? "no driving" : `driving ${drives.hours} h ${every(drives.everyNights)}`,
    mains === null ? "no mains" : `mains for ${mains.hours} h ${every(mains.everyNights)}`,
    shade.length === 0 ? "no shade" : "shade at camp by the hours given",
  ];
  return [`Taken: ${parts.join(", ")}.`];
}

/** The notes of several setups that say the same, put together under their letters. */
function notesSaid(notes: readonly string[], options: readonly Option[]): string[] {
  const rows = notes.map((note) => {
    const owner = options.find(({ setup }) => note.startsWith(`${setup.name}: `));
    return { letter: owner?.letter ?? "", row: owner ? note.slice(owner.setup.name.length + 2) : note };
  });
  return gathered(rows, (row) => row).map(({ letters, row }) => {
    const named = letters.filter(Boolean);
    return `${named.length > 0 ? `${named.join(", ")}: ` : ""}${bounded(row, 240)}`;
  });
}

/** The credits of the data that the place's figures come from; none for figures that the job itself gives. */
function sources({ place }: Pick<Job, "place">): string[] {
  if ("ghi_kWh_m2_day" in place) return ["Sunshine and temperatures: as given in the job file."];
  const used = "sky" in place ? credits.filter(({ id }) => id === "dwd-climat") : credits;
  const sky = "sky" in place ? [`Sunshine: a ${place.sky} sky by latitude, a class of our own.`] : [];
  return [...sky, ...used.map(({ printed }) => `${printed}.`)];
}
