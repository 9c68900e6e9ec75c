import { pieceName } from "../../../../packages/sim/src/feed/index.ts";
import type { PathPiece } from "../../../../packages/sim/src/study.ts";
import { expect, it } from "vitest";

// 23 ft is 7.0104 m (0.3048 m a foot, by definition); 8 AWG is 8.366 mm² (ASTM B258); 400 W at 12 V are 33.33 A.
it.each<[PathPiece, string]>([
  [{ kind: "cable", length_m: 7.0104, area_mm2: 8.36556406008, conductorClass: 5, temp_C: 40 }, "7.01 m of 8.37 mm²"],
  [{ kind: "cable", length_m: 7, area_mm2: 16, conductorClass: 5, temp_C: 40 }, "7 m of 16 mm²"],
  [{ kind: "fuse", rated_A: 33.3333333333 }, "33.33 A fuse"],
  [{ kind: "plug", limit_A: 33.3333333333, resistance_mOhm: 0.5 }, "33.33 A plug"],
  [{ kind: "load", amps: 33.3333333333 }, "33.33 A load"],
  [{ kind: "fuse", rated_A: 33.3333333333, name: "Main" }, "Main"],
])("names a piece in figures that a person would write: %j", (piece, name) => {
  expect(pieceName(piece)).toBe(name);
});
