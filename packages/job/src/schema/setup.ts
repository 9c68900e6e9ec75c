import * as z from "zod";
import { arrayDefaults, bankDefaults, feedDefaults, inverterDefaults, solarChargerDefaults } from "../defaults.ts";
import { kinds, choice, fields, id, line, list, plain, quantity, whole } from "./leaf.ts";
import { load } from "./load.ts";
import { path, run } from "./path.ts";

export const chemistry = choice("agm, gel, flooded lead-acid, or lfp (lithium iron phosphate)", [
  "agm",
  "gel",
  "flooded",
  "lfp",
]);

const nominal_V = z
  .union([z.literal(12), z.literal(24)], { error: "12 or 24 (V)" })
  .describe("Nominal volts of the bank: 12 or 24");

const restedPoint = fields("One point of the rested-volts curve", {
  share: quantity("Share of charge", "share", 0, 1),
  volts: quantity("Rested volts of a 12 V bank", "volts_V", 8, 16),
});

export const bank = fields("The bank", {
  chemistry,
  nominal_V: nominal_V.default(bankDefaults.nominal_V),
  capacity_Ah: quantity("At the 20 h rate, new, 25 °C, at nominal_V", "charge_Ah", 5, 5000),
  condition: quantity("Share of that capacity left", "share", 0.1, 1).default(bankDefaults.condition),
  where: choice("Inside the van or outside it: how warm it is", ["inside", "outside"]).default(bankDefaults.where),
  reserve: quantity("Charge under which one would rather not go; null: by chemistry", "share", 0, 0.95)
    .nullable()
    .default(null),
  cutOff_V: quantity("Volts under load at which loads drop; null: by chemistry", "volts_V", 9, 27)
    .nullable()
    .default(null),
  absorption_V: quantity("Charging volts; null: by chemistry", "volts_V", 13, 31).nullable().default(null),
  restedVolts: list("Rested volts of a 12 V bank by share of charge, rising; null: by chemistry", restedPoint, 40, 2)
    .nullable()
    .default(null),
});

export const array = fields("A solar array", {
  name: line("What to call it", 80).default(""),
  watts: quantity("At standard test conditions", "power_W", 1, 20000),
  tilt_deg: quantity("Tilt from flat", "angle_deg", 0, 90).default(arrayDefaults.tilt_deg),
  azimuth_deg: quantity("Direction it faces, clockwise from north; null: towards the equator", "angle_deg", 0, 360)
    .nullable()
    .default(null),
  mount: choice("How air gets behind it", ["flush", "free", "bonded"]).default(arrayDefaults.mount),
  soiling: quantity("Output lost to dirt", "share", 0, 0.9).default(arrayDefaults.soiling),
  gamma_per_K: plain("Power's temperature coefficient [1/K]", -0.01, 0).default(arrayDefaults.gamma_per_K),
});

export const solarCharger = fields("The solar charger", {
  kind: choice("What it does with the panel's volts", ["mppt", "pwm"]),
  rated_A: quantity("Output rating", "current_A", 1, solarChargerDefaults.most_A),
});

const alternator = fields("What is known of the alternator", {
  rated_A: quantity("Rating", "current_A", 10, 600),
  vehicle_A: quantity("What the vehicle itself takes on the road", "current_A", 0, 600).default(feedDefaults.vehicle_A),
});

export const source = fields("The alternator, or what the vehicle gives", {
  volts: quantity("Volts at the start of the run; null: 14.2, or 28.4 straight to a 24 V bank", "volts_V", 12, 32)
    .nullable()
    .default(null),
  low_V: quantity("What a variable-voltage alternator sits at; null: it is fixed", "volts_V", 10, 32)
    .nullable()
    .default(null),
  lowShare: quantity("Share of a drive at low_V", "share", 0, 1).default(feedDefaults.lowShare),
  spare_A: quantity("Amps left over for charging", "current_A", 0, 1000).default(feedDefaults.spare_A),
  alternator: alternator.nullable().default(null),
});

const sourceDefault = {
  volts: null,
  low_V: null,
  lowShare: feedDefaults.lowShare,
  spare_A: feedDefaults.spare_A,
  alternator: null,
};

export const relayFeed = fields("Straight to the bank through a relay", {
  kind: z.literal("relay"),
  source: source.default(sourceDefault),
  path,
});

export const converterFeed = fields("Through a DC-DC charger", {
  kind: z.literal("converter"),
  rated_A: quantity("Output amps of one", "current_A", 1, 500),
  count: whole("How many in parallel on the path", 1, 8).default(feedDefaults.converters),
  efficiency: quantity("Output power over input power", "share", 0.5, 1).default(feedDefaults.efficiency),
  minInput_V: quantity("Input volts under which it stops", "volts_V", 8, 30).default(feedDefaults.minInput_V),
  source: source.default(sourceDefault),
  path,
});

export const feed = kinds([relayFeed, converterFeed]).describe("How the bank is charged while driving");

export const inverter = fields("The inverter", {
  rated_W: quantity("Continuous rating", "power_W", 50, 20000),
  surge_W: quantity("For a few seconds; null: twice the rating", "power_W", 50, 60000).nullable().default(null),
  idle_W: quantity("Draw with nothing on; null: 0.7 % of the rating, at least 4 W", "power_W", 0, 500)
    .nullable()
    .default(null),
  peakEfficiency: quantity("Best efficiency; null: 0.05 each of both loss coefficients", "share", 0.6, 0.99)
    .nullable()
    .default(null),
  on: choice("On in hours that an ac load runs, or every hour", ["in-use", "always"]).default(inverterDefaults.on),
});

export const mainsCharger = fields("The mains or generator charger", {
  rated_A: quantity("Output rating", "current_A", 1, 500),
});

const loadChanges = fields("What runs differently with this setup", {
  drop: list("Ids of the job's loads that go", id("A load's id"), 300).default([]),
  add: list("Loads that come", load, 300).default([]),
});

export const setup = fields("What is fitted: now, or as proposed", {
  id: id("Short name, unique among the setups"),
  name: line("Name for people", 120, 1),
  bank,
  arrays: list("Solar arrays", array, 20).default([]),
  solarCharger: solarCharger
    .nullable()
    .optional()
    .describe("Omitted with arrays: an MPPT large enough not to limit them; null: none"),
  feed: feed.nullable().default(null),
  inverter: inverter.nullable().default(null),
  mainsCharger: mainsCharger.nullable().default(null),
  runs: list("Other runs of wire: inverter leads, panels to charger, fridge feed", run, 20).default([]),
  loads: loadChanges.default({ drop: [], add: [] }),
  price: plain("In the job's currency", 0, 1e9).default(0),
  mass_kg: quantity("Change of mass against what is fitted now", "mass_kg", -2000, 5000).default(0),
});
