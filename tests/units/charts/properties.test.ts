import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as charts from "@stayput/charts";
import type { ChartOptions, Picture } from "@stayput/charts";
import * as any from "./anyPicture.ts";
import { wellFormed } from "./xml.ts";

const size: fc.Arbitrary<ChartOptions> = fc.record({
  width_px: fc.constantFrom(120, 280, 348, 519, 560, 700, 1200),
  height_px: fc.constantFrom(80, 220, 400),
  locale: fc.constantFrom("en", "de", "fr"),
  at: fc.option(fc.integer({ min: -1, max: 30 })),
});

/** What must hold of every kind of picture, whatever the answer. */
function holds<Data>(kind: Picture<Data>, data: fc.Arbitrary<Data>): void {
  describe(kind.kind, () => {
    it("draws no NaN and stays well-formed, whatever the answer", () => {
      fc.assert(
        fc.property(data, size, (picture, options) => {
          const saved = charts.toSvgText(kind.chart(picture, options), "dark");
          wellFormed(saved);
          expect(saved.replace(/>[^<]*</g, "><").replace(/aria-label="[^"]*"/g, "")).not.toMatch(
            /NaN|undefined|Infinity|null/,
          );
        }),
      );
    });
    it("tabulates whole rows, and reads out at every stop without a gap", () => {
      fc.assert(
        fc.property(data, size, (picture, options) => {
          const { columns, rows, caption } = kind.table(picture);
          expect(caption).not.toBe("");
          for (const row of rows) expect(row.length).toBe(columns.length);
          const { stops } = kind.geometry(picture, options);
          for (const stop of stops.slice(0, 30))
            for (const { value } of kind.readout(picture, stop).lines) expect(value).not.toMatch(/NaN|undefined|^$/);
          expect(kind.summary(picture)).toMatch(/\.$/);
        }),
      );
    });
    it("finds the stop whose place is asked for, and never one that is not there", () => {
      fc.assert(
        fc.property(
          data,
          size,
          fc.integer({ min: -50, max: 1300 }),
          fc.integer({ min: -50, max: 900 }),
          (picture, options, x, y) => {
            const { stops, positionAt } = kind.geometry(picture, options);
            if (stops.length > 0) expect(stops).toContain(positionAt(x, y));
          },
        ),
      );
    });
  });
}

holds(charts.chargeKind, any.anyCharge);
holds(charts.chargePanelsKind, any.anyCharge);
holds(charts.dayKind, any.anyDay);
holds(charts.usesKind, any.anyUses);
holds(charts.yearKind, any.anyYear);
holds(charts.sizeKind, any.anySize);
holds(charts.runKind, any.anyRun);
holds(charts.upgradesKind, any.anyUpgrades);
