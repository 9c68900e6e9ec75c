import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as charts from "@stayput/charts";
import type { Picture } from "@stayput/charts";
import * as any from "./anyPicture.ts";
import { clashes } from "./textBoxes.ts";

const widths = fc.constantFrom(340, 366, 480, 519, 560, 627, 700, 1100);

/** No words on other words, whatever the answer, at the widths that pages have. */
function clear<Data>(kind: Picture<Data>, data: fc.Arbitrary<Data>): void {
  it(kind.kind, () => {
    fc.assert(
      fc.property(data, widths, (picture, width_px) => {
        const saved = charts.toSvgText(kind.chart(picture, { width_px, height_px: 320, locale: "en" }), "light");
        expect(clashes(saved)).toEqual([]);
      }),
    );
  });
}

describe("no label lies on another", () => {
  clear(charts.chargeKind, any.anyCharge);
  clear(charts.chargePanelsKind, any.anyCharge);
  clear(charts.dayKind, any.anyDay);
  clear(charts.usesKind, any.anyUses);
  clear(charts.yearKind, any.anyYear);
  clear(charts.sizeKind, any.anySize);
  clear(charts.runKind, any.anyRun);
  clear(charts.upgradesKind, any.anyUpgrades);
});
