import { expect, it } from "vitest";
import { clockHour } from "../../../../apps/web/src/fields/typed.ts";

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
