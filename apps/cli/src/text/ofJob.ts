import type { JobRead } from "../io/readJob.ts";
import type { Of } from "./headAndFoot.ts";
import { dateSaid } from "./numbers.ts";
import { placeSaid } from "./placeSaid.ts";

/** What an answer to a job is of, in words. */
export const ofJob = ({ job, place, study }: JobRead): Of => ({
  title: job.title,
  customer: job.customer.name === "" ? null : job.customer.name,
  place: placeSaid(place),
  arrive: dateSaid(study.trip.month, study.trip.day),
});
