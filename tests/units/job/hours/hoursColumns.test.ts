import { expect, it } from "vitest";
import { hoursColumns } from "@stayput/job";
import { ledgerOf } from "@stayput/sim";
import { openCamp, setup, study, twoAgm } from "../../../fixtures/stays.ts";

it.each([
  [{ month: 1, day: 31 }, ["01-31", "02-01", "02-02"]],
  [{ month: 2, day: 29 }, ["02-28", "03-01", "03-02"]], // the simulation's year has no 29 February
  [{ month: 12, day: 31 }, ["12-31", "01-01", "01-02"]],
])("dates the hours of a stay from %j as the simulation counts its days", (arrive, dates) => {
  const trip = { ...openCamp, ...arrive, nights: 2 };
  const columns = hoursColumns(ledgerOf(study([setup(twoAgm, 100)], trip), "now"), trip);
  const { values } = columns.find(({ name }) => name === "date")!;
  expect([...new Set(Array.from(values))]).toEqual(dates);
});
