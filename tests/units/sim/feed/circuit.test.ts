import { expect, it } from "vitest";
import { prepareFeed, relayOverruns } from "../../../../packages/sim/src/feed/index.ts";
import type { ConverterFeed, PathPiece, RelayFeed } from "../../../../packages/sim/src/study.ts";

const path: PathPiece[] = [
  { kind: "fuse", rated_A: 30 },
  { kind: "cable", length_m: 7, area_mm2: 8, conductorClass: 5, temp_C: 40 },
  { kind: "plug", limit_A: 50, resistance_mOhm: 0.5 },
];
const relay: RelayFeed = { kind: "relay", source: { volts: 14.2, low_V: 12.4, lowShare: 0.8, spare_A: 60 }, path };
const converter: ConverterFeed = {
  ...relay,
  kind: "converter",
  rated_A: 40,
  count: 1,
  efficiency: 0.93,
  minInput_V: 11.5,
};

it("splits a variable-voltage source into its two shares", () => {
  const { shares } = prepareFeed(relay);
  expect(shares.map((s) => s.source_V)).toEqual([12.4, 14.2]);
  expect(shares[0]!.weight).toBe(0.8);
  expect(shares[0]!.weight + shares[1]!.weight).toBe(1);
  expect(prepareFeed({ ...relay, source: { ...relay.source, low_V: null } }).shares).toEqual([
    { source_V: 14.2, weight: 1, held_W: 0 },
  ]);
});

it("adds up the path: cable there and back at 40 °C, and the plug", () => {
  // 8 mm² halfway between 6 (19.8) and 10 (19.1): 19.45 / 8 ohm/km
  const expected = 2 * 0.007 * (19.45 / 8) * (1 + 0.00393 * 20) + 0.0005;
  expect(prepareFeed(relay).resistance_Ohm).toBeCloseTo(expected, 12);
});

it("holds a relay to the source alone, and flags the fuse that it runs over", () => {
  const circuit = prepareFeed(relay);
  expect(circuit.spare_A).toBe(60);
  expect(circuit.converter).toBeNull();
  expect(relayOverruns(path, 40)).toEqual([{ by: "fuse", name: "30 A fuse", rated_A: 30, carried_A: 40 }]);
  expect(relayOverruns(path, 29)).toEqual([]);
});

it.each([
  ["feed.source.volts must be 6 to 60, got NaN", { source: { ...relay.source, volts: Number.NaN } }],
  ["feed.source.low_V must be 6 to 14.2", { source: { ...relay.source, low_V: 15 } }],
  ["feed.source.lowShare", { source: { ...relay.source, lowShare: 1.2 } }],
  ["feed.source.spare_A", { source: { ...relay.source, spare_A: -1 } }],
  ["feed.efficiency", { efficiency: 0 }],
  ["feed.count must be a whole number", { count: 1.5 }],
  ["feed.minInput_V", { minInput_V: -1 }],
  ["feed.rated_A", { rated_A: Number.POSITIVE_INFINITY }],
  ["feed.path[0].rated_A", { path: [{ kind: "fuse", rated_A: 0 }] }],
  ["feed.path[1].area_mm2 must be 0.1 to 1000, got 0", { path: [path[0], { ...path[1], area_mm2: 0 }] }],
  ["feed.path[0].limit_A", { path: [{ ...path[2], limit_A: Number.NaN }] }],
])("refuses with: %s", (message, fault) => {
  expect(() => prepareFeed({ ...converter, ...fault } as ConverterFeed)).toThrow(message);
});
