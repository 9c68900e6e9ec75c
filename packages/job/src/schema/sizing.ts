import { sizingDefaults } from "../defaults.ts";
import { fields, list, monthDay, plain, quantity, whole } from "./leaf.ts";
import { place } from "./place.ts";
import { chemistry } from "./setup.ts";

const price = plain("In the job's currency; null: not known", 0, 1e9).nullable().default(null);
const mass_kg = quantity("Mass of one; null: not known", "mass_kg", 0, 2000).nullable().default(null);

const bankSize = fields("A bank that is sold", {
  chemistry,
  capacity_Ah: quantity("At the 20 h rate, at the setup's volts", "charge_Ah", 5, 5000),
  price,
  mass_kg,
});

const arraySize = fields("An array that is sold, its panels together", {
  watts: quantity("At standard test conditions", "power_W", 0, 20000),
  price,
  mass_kg,
});

const panelSize = fields("A panel that is sold", {
  watts: quantity("At standard test conditions", "power_W", 1, 1000),
  price,
  mass_kg,
  most: whole("How many fit on the roof", 1, 50),
});

export const sizing = fields("What to size for", {
  nights: whole("Nights to last; null: the trip's", 1, 60).nullable().default(null),
  chance: quantity("Chance of lasting that is asked", "share", 0.01, 0.999).default(sizingDefaults.chance),
  months: list("Months to hold in, 1 to 12; empty: the month of arrival", whole("A month", 1, 12), 12).default([]),
  chemistries: list("Chemistries to try; empty: all of the ladder", chemistry, 4).default([]),
  roof_W: quantity("Most watts that the roof takes; null: no limit", "power_W", 0, 20000).nullable().default(null),
  budget: plain("Most to spend, in the job's currency; null: no limit", 0, 1e9).nullable().default(null),
  banks: list("Ladder of banks; empty: the catalogue's", bankSize, 200).default([]),
  arrays: list("Ladder of arrays; empty: made of the panels, or the catalogue's", arraySize, 100).default([]),
  panels: list("Panels from which arrays are made up", panelSize, 20).default([]),
});

export const observation = fields("What the customer saw", {
  flatOnMorning: whole("The bank was flat on this morning after arrival, 1 the first", 1, 60),
  arrived: monthDay('Day of that arrival, "MM-DD"; null: the trip\'s').nullable().default(null),
  place: place.nullable().default(null).describe("Where that was; null: the trip's place"),
});
