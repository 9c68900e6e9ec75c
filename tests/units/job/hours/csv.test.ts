import { expect, it } from "vitest";
import { csv } from "@stayput/job";

it("writes a head row and a row for each value, plain numbers to a millionth", () => {
  const text = csv([
    { name: "sun_Wh", values: Float64Array.of(1 / 3, -0, 1e-9) },
    { name: "why", values: ["none", "a,b", 'say "so"'] },
  ]);
  expect(text).toBe('sun_Wh,why\n0.333333,none\n0,"a,b"\n0,"say ""so"""\n');
});

it.each(["=1+1", "+1", "-1", "@x", "\tx", '=HYPERLINK("http://x")'])(
  "makes the cell %j harmless to a spreadsheet",
  (name) => {
    expect(csv([{ name, values: [] }])).toMatch(/^"?'/);
  },
);
