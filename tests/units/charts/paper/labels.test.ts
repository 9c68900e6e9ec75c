import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  dodge,
  firstFree,
  fitText,
  rowsFor,
  textWidth_px,
  wrapText,
} from "../../../../packages/charts/src/paper/labels.ts";

const tenths = (from: number, to: number) => fc.integer({ min: from * 10, max: to * 10 }).map((n) => n / 10);
const wanted = fc.record({ want: tenths(-50, 450), size: tenths(1, 60) });

describe("dodge", () => {
  it("never lets labels overlap, keeps their order, and starts no earlier than it may", () => {
    fc.assert(
      fc.property(fc.array(wanted, { maxLength: 10 }), (labels) => {
        const middles = dodge(labels, 0, 400);
        const placed = labels
          .map((label, i) => ({ ...label, i, top: middles[i]! - label.size / 2, bottom: middles[i]! + label.size / 2 }))
          .sort((a, b) => a.top - b.top);
        placed.forEach((label, i) => {
          expect(label.top).toBeGreaterThanOrEqual(-1e-6);
          const before = placed[i - 1];
          if (!before) return;
          expect(label.top).toBeGreaterThanOrEqual(before.bottom - 1e-6);
          expect(before.want).toBeLessThanOrEqual(label.want);
        });
      }),
    );
  });
  it("stays inside where everything fits", () => {
    fc.assert(
      fc.property(fc.array(wanted, { minLength: 1, maxLength: 6 }), (labels) => {
        const middles = dodge(labels, 0, 400);
        labels.forEach((label, i) => expect(middles[i]! + label.size / 2).toBeLessThanOrEqual(400 + 1e-6));
      }),
    );
  });
  it("leaves labels alone that have room", () => {
    expect(
      dodge(
        [
          { want: 300, size: 20 },
          { want: 50, size: 20 },
        ],
        0,
        400,
      ),
    ).toEqual([300, 50]);
  });
  it("shares the move between two that collide", () => {
    expect(
      dodge(
        [
          { want: 100, size: 20 },
          { want: 110, size: 20 },
        ],
        0,
        400,
      ),
    ).toEqual([95, 115]);
  });
});

describe("rowsFor", () => {
  it("puts no two spans that meet into one row, and no leader through the words below it", () => {
    const span = fc.tuple(tenths(0, 300), tenths(1, 150)).map(([from, width]) => ({ from, to: from + width }));
    fc.assert(
      fc.property(fc.array(span, { maxLength: 8 }), (spans) => {
        const rows = rowsFor(spans);
        spans.forEach((a, i) =>
          spans.forEach((b, j) => {
            if (i >= j) return;
            const apart = a.to <= b.from || b.to <= a.from;
            expect(apart || rows[i] !== rows[j]).toBe(true);
            const [left, right] = a.from < b.from ? [i, j] : [j, i];
            if (!apart && a.from !== b.from) expect(rows[left]!).toBeGreaterThan(rows[right]!);
          }),
        );
      }),
    );
  });
});

describe("text", () => {
  const words = fc.string({ minLength: 0, maxLength: 60 });
  it("is cut to its room, and only when it must be", () => {
    fc.assert(
      fc.property(words, tenths(30, 300), (text, width) => {
        const cut = fitText(text, width);
        expect(textWidth_px(cut)).toBeLessThanOrEqual(Math.max(width, textWidth_px(text.slice(0, 2) + "…")));
        if (textWidth_px(text) <= width) expect(cut).toBe(text);
      }),
    );
  });
  it("wraps into no more lines than it may", () => {
    expect(wrapText("Tired bank under the big tree", 100, 2)).toEqual(["Tired bank", "under the big tr…"]);
    expect(wrapText("Gas", 100, 2)).toEqual(["Gas"]);
  });
});

it("takes the first free place, and none when all are taken", () => {
  const inside = { x: 0, y: 0, width: 100, height: 100 };
  const place = (x: number) => ({ x, y: 0, width: 10, height: 10 });
  expect(firstFree([place(-5), place(5), place(50)], [place(0)], inside)).toEqual(place(50));
  expect(firstFree([place(5)], [place(0)], inside)).toBeNull();
});
