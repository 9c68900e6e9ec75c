import { diameterCables } from "@stayput/sim";
import * as z from "zod";
import { feedDefaults as d } from "../defaults.ts";
import { kinds, fields, id, choice, line, list, quantities, quantity } from "./leaf.ts";

const name = line("What to call it", 80).optional();

export const fuse = fields("A fuse or breaker", {
  kind: z.literal("fuse"),
  rated_A: quantity("Rating", "current_A", 1, 1000),
  name,
});

const classes = z
  .union([z.literal(2), z.literal(5)], { error: "2 (stranded) or 5 (flexible)" })
  .describe("IEC 60228 class: 5 flexible, 2 stranded");

const diameters = diameterCables.map(({ diameter_mm }) => diameter_mm);
const autoSize_mm = z
  .literal(diameters, { error: `${diameters.join(", ")} (mm)` })
  .describe("Cable sold by its diameter over the insulation, which holds less copper than it sounds [mm]");
quantities.set(autoSize_mm, "diameter_mm");

export const cable = fields("A run of cable; give exactly one of area_mm2, awg and autoSize_mm", {
  kind: z.literal("cable"),
  length_m: quantity("One way; the current goes there and back", "length_m", 0.05, 200),
  area_mm2: quantity("Copper", "area_mm2", 0.5, 240).optional(),
  awg: z
    .string({ error: 'a gauge from "20" to "4/0"' })
    .regex(/^(?:20|1\d|[1-9]|[1-4]\/0)$/, { error: 'a gauge from "20" to "4/0"' })
    .optional()
    .describe('American wire gauge, from "20" to "4/0"'),
  autoSize_mm: autoSize_mm.optional(),
  class: classes.default(d.conductorClass),
  temp_C: quantity("Conductor temperature", "temperature_C", -20, 120).default(d.temp_C),
  name,
});

export const plug = fields("A plug and socket", {
  kind: z.literal("plug"),
  limit_A: quantity("What its pins carry", "current_A", 1, 1000),
  resistance_mOhm: quantity("Both poles together", "resistance_mOhm", 0, 1000).default(d.plugResistance_mOhm),
  name,
});

export const fedLoad = fields("Something fed on the way, at this point of the path", {
  kind: z.literal("load"),
  amps: quantity("What it draws while the path is in use", "current_A", 0, 200),
  name,
});

export const piece = kinds([fuse, cable, plug, fedLoad]).describe("A piece of the path");

export const path = list("From the source to the far end, in order", piece, 30, 1);

export const run = fields("Another run of wire", {
  kind: choice("What it feeds", ["inverter", "solar", "fridge-feed"]),
  name,
  path,
  load: id("For a fridge feed: the load at its end").optional(),
});

export type PathInJob = z.output<typeof path>;
