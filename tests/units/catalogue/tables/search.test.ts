import { bankLadder, loadFrom, loadRows, searchAppliances } from "@stayput/catalogue";
import { describe, expect, it } from "vitest";

const ids = (text: string) => searchAppliances(text).map((row) => row.id);

describe("searchAppliances", () => {
  it("brings fridges of both kinds for a few letters", () => {
    const kinds = new Set(searchAppliances("fri", 20).map((row) => row.kind));
    expect(kinds).toContain("compressor-fridge");
    expect(kinds).toContain("absorption-fridge");
  });
  it.each(["f", "fri", "fridge"])("puts fridges before the fan behind one for %s", (text) => {
    expect(searchAppliances(text)[0]!.kind).toBe("compressor-fridge");
  });
  it.each([
    ["ket", "kettle"],
    ["cpap", "cpap"],
    ["TV", "tv"],
    ["three-way 150", "three-way-150"],
    ["188 fridge", "fridge-upright-188"],
    ["wifi", "router"],
    ["microwav", "microwave"],
    ["indcution", "induction-hob"],
  ])("finds %s", (text, id) => expect(ids(text)).toContain(id));
  it("finds nothing for nonsense", () => expect(ids("qqqq")).toEqual([]));
  it("finds every row by its name", () => {
    for (const row of loadRows) expect(searchAppliances(row.name, 3), row.name).toContain(row);
  });
});

describe("loadFrom", () => {
  it("gives a load of the row's kind with an id of one's own", () => {
    for (const row of loadRows) {
      expect(loadFrom(row)).toMatchObject({ id: row.id, name: row.name, kind: row.kind });
      expect(loadFrom(row, "mine").id).toBe("mine");
    }
  });
  it("gives starting watts where there are any", () => {
    const load = (id: string) => loadFrom(loadRows.find((row) => row.id === id)!);
    expect(load("water-pump")).toMatchObject({ watts: 60, surge_W: 120 });
    expect(load("kettle")).toMatchObject({ surge_W: null });
  });
});

describe("bankLadder", () => {
  it("has each size once, rising, of at most four batteries alike", () => {
    const ladder = bankLadder("agm", 400);
    const sizes = ladder.map((bank) => bank.capacity_Ah);
    expect(sizes).toEqual([...new Set(sizes)].sort((a, b) => a - b));
    expect(sizes).toContain(100);
    expect(sizes).toContain(200);
    expect(Math.max(...sizes)).toBeLessThanOrEqual(400);
    for (const { count, battery, capacity_Ah, mass_kg } of ladder) {
      expect([capacity_Ah, mass_kg]).toEqual([count * battery.capacity_Ah, count * battery.mass_kg]);
      expect(count).toBeLessThanOrEqual(4);
    }
  });
  it("takes the lightest way to a size", () => {
    const two = bankLadder("agm").find((bank) => bank.capacity_Ah === 200)!;
    expect(two.mass_kg).toBe(58); // two of 100 Ah at 29 kg, against one of 59
  });
});
