import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unpackPlanes } from "../../../../packages/catalogue/src/climate/planes.ts";
import { packPlanes } from "../../../../apps/chores/src/climate/packPlanes.ts";

const plane = fc
  .record({ rows: fc.integer({ min: 1, max: 12 }), columns: fc.integer({ min: 1, max: 12 }) })
  .chain(({ rows, columns }) =>
    fc
      .array(fc.integer({ min: -5000, max: 5000 }), { minLength: rows * columns, maxLength: rows * columns })
      .map((values) => ({ rows, columns, values: Int32Array.from(values) })),
  );

describe("packed planes", () => {
  it("come out as they went in", () => {
    fc.assert(
      fc.property(fc.array(plane, { minLength: 1, maxLength: 4 }), (planes) => {
        expect(unpackPlanes(packPlanes(planes), planes)).toEqual(planes);
      }),
    );
  });

  it("say so when they are damaged", () => {
    const packed = packPlanes([{ rows: 1, columns: 3, values: Int32Array.of(1, 2, 3) }]);
    expect(() => unpackPlanes(packed, [{ rows: 1, columns: 4 }])).toThrow(/damaged: 6 bytes for 4 cells/);
  });

  it("refuse a step that two bytes cannot hold", () => {
    const values = Int32Array.of(0, 40_000);
    expect(() => packPlanes([{ rows: 1, columns: 2, values }])).toThrow(/does not fit two bytes/);
  });
});
