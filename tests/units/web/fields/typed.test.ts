import { expect, it } from "vitest";
import { acceptedIn, clockHour } from "../../../../apps/web/src/fields/typed.ts";

it("says what a blank takes in its own terms", () => {
  expect(acceptedIn("percent", "a number from 0 to 0.95 (share), or null")).toBe("0 to 95 %; or nothing");
  expect(acceptedIn("clock", "a number from 0 to 24 (clock hour)")).toBe("a time from 00:00 to 24:00, such as 18:30");
  expect(acceptedIn("number", "a number from 1 to 60 (nights)")).toBe("a number from 1 to 60 (nights)");
});

it.each([
  ["9", 9],
  ["9:30", 9.5],
  ["9h30", 9.5],
  ["0930", 9.5],
  ["1845", 18.75],
  ["2400", 24],
  ["9.5", 9.5],
  ["930", 930], // refused by its range, with what was typed
  ["9pm", null], // left to the job's reader of words
])("reads %s as a clock hour", (text, hour) => expect(clockHour(text)).toBe(hour));
