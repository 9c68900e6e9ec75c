import * as z from "zod";
import { fields, line, list, prose, quantity } from "./leaf.ts";
import { load } from "./load.ts";
import { place } from "./place.ts";
import { setup } from "./setup.ts";
import { observation, sizing } from "./sizing.ts";
import { trip } from "./trip.ts";

/** What a job file's `format` says. */
export const FORMAT = "stayput-job";
/** The version of job files that is written; older ones are read too. */
export const VERSION = 1;

const customer = fields("Whom it is for", {
  name: line("Name", 200).default(""),
  notes: prose("What they say", 5000).default(""),
});

const workshop = fields("Who hands it over, for the head of the printed page", {
  name: line("Name", 200).default(""),
  contact: line("Telephone, address or the like", 300).default(""),
});

/**
 * The job file: one shape for the command line, the web page, imports and links. Parsed values carry every default;
 * checks across fields (ids, references, one conductor size) are in ../checks/.
 */
export const jobSchema = fields("A job for Stayput: a place, a trip, what runs and what is fitted", {
  format: z.literal(FORMAT, { error: `"${FORMAT}"` }).describe(`Always "${FORMAT}"`),
  version: z.literal(VERSION, { error: `${VERSION}` }).describe("Version of this format"),
  title: line("What the job is called", 200, 1),
  about: prose("Anything to say about the file itself, such as that it is an invented example", 2000).default(""),
  customer: customer.default({ name: "", notes: "" }),
  workshop: workshop.default({ name: "", contact: "" }),
  currency: z
    .string({ error: 'three capital letters, such as "ZAR", or null' })
    .regex(/^[A-Z]{3}$/, { error: 'three capital letters, such as "ZAR", or null' })
    .nullable()
    .default(null)
    .describe("Currency of the prices, ISO 4217; null: bare numbers"),
  place,
  trip,
  payload_kg: quantity("Payload left on the vehicle; null: not known", "mass_kg", 0, 20000).nullable().default(null),
  loads: list("What runs", load, 300),
  setups: list("What is fitted now, then each proposal", setup, 12, 1),
  sizing: sizing.nullable().default(null),
  match: list("What the customer saw, to find what would explain it", observation, 5).default([]),
});

/** A parsed job, every default filled in. */
export type Job = z.output<typeof jobSchema>;
/** A job as written, defaults left out. */
export type JobInput = z.input<typeof jobSchema>;
/** A setup as it stands in a parsed job. */
export type SetupInJob = Job["setups"][number];
