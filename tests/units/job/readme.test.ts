import { packJob, parseJob, parseJobText, resolve, toJobText, unpackJob } from "@stayput/job";
import { parseQuantity, words } from "@stayput/job/quantities";
import { expect, it } from "vitest";
import { demo } from "./helpers.ts";

it("the README's example answers as printed", async () => {
  const text = demo("family-caravan");
  const read = parseJobText(text, { words });
  if (!read.ok) throw new Error(read.faults[0]!.message);
  expect(read.job.setups[0]!.bank.where).toBe("inside");
  const ready = await resolve(read.job, { month: 12 });
  if (!ready.ok) throw new Error(ready.faults[0]!.message);
  expect(ready.study.trip).toMatchObject({ month: 12, day: 14, nights: 6 });
  expect(ready.place.name).toBe("Charleville");

  const slip = parseJob({ ...(JSON.parse(text) as object), currancy: "AUD" });
  expect(!slip.ok && slip.faults[0]!.message).toBe('currancy: unknown field "currancy"; did you mean currency?');
  expect(parseQuantity("3 A", "power_W", { volts_V: 12 })).toEqual({
    ok: true,
    unit: "W",
    value: 36,
    assumption: "3 A is taken at 12 V, which makes 36 W",
  });
  expect(unpackJob(packJob(read.job))).toEqual({ ok: true, job: read.job, notes: [] });
  expect(parseJobText(toJobText(read.job))).toEqual({ ok: true, job: read.job, notes: [] });
});
