import { tripDefaults } from "../defaults.ts";
import { fields, list, monthDay, quantity, whole } from "./leaf.ts";

const clock = (about: string): ReturnType<typeof quantity> => quantity(about, "clock_h", 0, 24);

export const shadeWindow = fields("Hours in which shade takes part of the array's output", {
  from: clock("Begins"),
  to: clock("Ends; before `from` it runs past midnight"),
  lost: quantity("Fraction of output lost", "share", 0, 1),
});

export const drives = fields("Driving days", {
  everyNights: whole("Drives on days n, 2n, … after arrival", 1, 60),
  hours: quantity("How long a drive lasts", "duration_h", 0.1, 24),
  departs: clock("Leaves at; the drive must end by midnight").default(tripDefaults.departs),
});

export const mainsStops = fields("Nights on mains", {
  everyNights: whole("On mains on days n, 2n, … after arrival", 1, 60),
  hours: quantity("How long a stop on mains lasts", "duration_h", 0.1, 24),
  from: clock("Plugged in at; may run past midnight").default(tripDefaults.mainsFrom),
});

export const trip = fields("The trip", {
  arrive: monthDay('Day of arrival at camp, "MM-DD", 29 February taken as the 28th; arrival is at 15:00'),
  nights: whole("Nights to last", 1, 60),
  startCharge: quantity("State of charge on arrival", "share", 0, 1).default(tripDefaults.startCharge),
  bayOffset_C: quantity("How much warmer the fridge bay is than outside", "difference_K", 0, 25).default(
    tripDefaults.bayOffset_C,
  ),
  shade: list("Shade at camp", shadeWindow, 24).default([]),
  drives: drives.nullable().default(null),
  mains: mainsStops.nullable().default(null),
});
