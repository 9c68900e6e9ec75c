import { expect, it } from "vitest";
import { table } from "../../../../apps/cli/src/text/table.ts";

it("pads by columns on the screen, not by characters, and drops trailing spaces", () => {
  const lines = table(
    [
      { head: "load", align: "left" },
      { head: "Wh\na day", align: "right" },
    ],
    [
      ["\u51b7\u8535\u5eab", "801"],
      ["lights", "63"],
    ],
  );
  expect(lines).toEqual(["           Wh", "load    a day", "\u51b7\u8535\u5eab    801", "lights     63"]);
});
