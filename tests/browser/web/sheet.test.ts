import type { Page } from "playwright-core";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { answered, expectSound, jobOf, openPage, type, type Opened } from "./openPage.ts";
import { expectSameAsSim } from "./sameAsSim.ts";
import { served } from "./served.ts";

const here = served();
let opened: Opened;
let page: Page;

beforeEach(async () => {
  opened = await openPage(here);
  page = opened.page;
});
afterEach(async () => {
  const { complaints } = opened;
  await expectSound(page);
  await opened.close();
  expect(complaints).toEqual([]);
});

/** Where the keyboard is, by what a screen reader would call it. */
const focused = (): Promise<string> =>
  page.evaluate(() => {
    const here = document.activeElement as HTMLElement | null;
    const label = here instanceof HTMLInputElement ? here.labels?.[0]?.textContent : here?.textContent;
    return (here?.getAttribute("aria-label") ?? label ?? "").trim();
  });

async function tabTo(name: string | RegExp, most = 60): Promise<void> {
  for (let i = 0; i < most; i++) {
    const here = await focused();
    if (typeof name === "string" ? here === name : name.test(here)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`${String(name)} was not reached by Tab`);
}

const undo = (): Promise<void> => page.keyboard.press("Control+z");

describe("a newcomer with a keyboard alone", () => {
  it("comes from an empty sheet to an answer by place, month and three ticks", async () => {
    await tabTo("Start an empty sheet");
    await page.keyboard.press("Enter");
    await page.locator("the-bench .invite", { hasText: "Name a place and tick what runs" }).waitFor();
    await tabTo("Place");
    await page.keyboard.type("upingt");
    await page.getByRole("option", { name: /Upington/ }).waitFor();
    await page.keyboard.press("Enter");
    await tabTo(/^Month|January/);
    await page.keyboard.type("July");
    for (const name of ["Portable fridge", "Lights", "Water pump"]) {
      await tabTo(name);
      await page.keyboard.press("Space");
      await page.locator("load-line").nth(["Portable fridge", "Lights", "Water pump"].indexOf(name)).waitFor();
    }
    const answer = await expectSameAsSim(page);
    expect(answer.setups[0]!.use_Wh_day.byLoad).toHaveLength(3);
    const job = await jobOf(page);
    expect(job.place).toEqual({ id: "za-upington" });
    expect(job.trip.arrive).toMatch(/^07-/);
    expect(await page.locator("the-bench .sentence").innerText()).toContain("July");
  });
});

it("goes from the first key press past the sheet to the answer", async () => {
  await answered(page);
  await page.keyboard.press("Tab");
  expect(await focused()).toBe("To the answer");
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => document.activeElement?.closest(".row")?.id)).toBe("row-4");
  expect((await jobOf(page)).title).toContain("demo");
});

describe("each row, edited, answers as the library does, and undo takes it back", () => {
  const edits: readonly { row: string; change: () => Promise<void> }[] = [
    { row: "where and when: nights", change: () => type(page, "trip.nights", "4") },
    { row: "where and when: charge on arrival, in percent", change: () => type(page, "trip.startCharge", "70") },
    { row: "what runs: watts", change: () => type(page, "loads[1].watts", "41") },
    { row: "what runs: amps in words", change: () => type(page, "loads[1].watts", "3 A") },
    { row: "what runs: a fridge's rating", change: () => type(page, "loads[0].rated_Wh_day", "1.1 kWh/day") },
    { row: "what is fitted: capacity", change: () => type(page, "setups[0].bank.capacity_Ah", "150") },
    { row: "what is fitted: panels", change: () => type(page, "setups[0].arrays[0].watts", "410") },
  ];
  it("in turn", async () => {
    const first = await expectSameAsSim(page);
    const before = await jobOf(page);
    for (const { row, change } of edits) {
      await change();
      const changed = await expectSameAsSim(page);
      expect(changed, row).not.toEqual(first);
      await undo();
      expect(await jobOf(page), row).toEqual(before);
    }
    await page.keyboard.press("Control+Shift+z");
    expect((await jobOf(page)).setups[0]!.arrays![0]!.watts).toBe(410);
  });
});

describe("the strip", () => {
  it("moves by quarter hours and hours, resizes, adds and deletes by keyboard", async () => {
    await answered(page);
    const strip = page.locator("load-line").filter({ has: page.locator('[data-path="loads[1].watts"]') });
    const before = (await jobOf(page)).loads[1]! as { use: { from: number; to: number }[] };
    const uses = async () => ((await jobOf(page)).loads[1] as { use: { from: number; to: number }[] }).use;
    const { from, to } = before.use[0]!;
    await strip.locator(".bar").first().focus();
    await page.keyboard.press("ArrowRight");
    expect(await uses()).toEqual([{ from: from + 0.25, to: to + 0.25 }]);
    await page.keyboard.press("Shift+ArrowLeft");
    expect(await uses()).toEqual([{ from: from - 0.75, to: to - 0.75 }]);
    await strip.getByRole("slider", { name: /until/ }).focus();
    await page.keyboard.press("ArrowRight");
    expect(await uses()).toEqual([{ from: from - 0.75, to: to - 0.5 }]);
    await strip.getByRole("slider", { name: /from/ }).focus();
    await page.keyboard.press("ArrowLeft");
    expect(await uses()).toEqual([{ from: from - 1, to: to - 0.5 }]);
    await page.keyboard.press("Enter");
    expect(await uses()).toHaveLength(2);
    await page.keyboard.press("Delete");
    expect(await uses()).toHaveLength(1);
    await expectSameAsSim(page);
  });

  it("draws a new bar by pointer, drags its end, and snaps to the quarter hour", async () => {
    await answered(page);
    const track = page.locator('load-line:has([data-path="loads[1].watts"]) .track');
    await track.scrollIntoViewIfNeeded();
    const box = (await track.boundingBox())!;
    const at = (hour: number) => box.x + (hour / 24) * box.width;
    const y = box.y + box.height / 2;
    await page.mouse.move(at(8), y);
    await page.mouse.down();
    await page.mouse.move(at(9), y, { steps: 4 });
    await page.mouse.move(at(10.1), y, { steps: 4 });
    await page.mouse.up();
    const drawn = ((await jobOf(page)).loads[1] as { use: { from: number; to: number }[] }).use.at(-1)!;
    expect(Math.abs(drawn.from - 8)).toBeLessThanOrEqual(0.25);
    expect(Math.abs(drawn.to - 10)).toBeLessThanOrEqual(0.25);
    expect((drawn.from * 4) % 1).toBe(0);
    await undo();
    expect(((await jobOf(page)).loads[1] as { use: unknown[] }).use).toHaveLength(1);
  });
});

describe("loads", () => {
  it("are found by a few letters, and added under any name", async () => {
    await answered(page);
    const count = (await jobOf(page)).loads.length;
    const box = page.getByRole("combobox", { name: "Add what runs" });
    await box.fill("kett");
    await page
      .getByRole("option", { name: /kettle/i })
      .first()
      .waitFor();
    await page.keyboard.press("Enter");
    await page.locator("load-line").nth(count).waitFor();
    expect((await jobOf(page)).loads.at(-1)).toMatchObject({ id: "kettle", kind: "appliance" });
    await box.fill("Gizmo <b>7</b>");
    await page.getByRole("option", { name: /something else/ }).click();
    await page
      .locator("load-line")
      .nth(count + 1)
      .waitFor();
    expect((await jobOf(page)).loads.at(-1)).toMatchObject({ name: "Gizmo <b>7</b>", watts: 20 });
    await expectSameAsSim(page);
    await page.getByRole("button", { name: "Remove Gizmo <b>7</b>" }).click();
    expect((await jobOf(page)).loads).toHaveLength(count + 1);
  });

  it("are added with the draw or the day's use that is typed, and a fridge where that is meant", async () => {
    await answered(page);
    const box = page.getByRole("combobox", { name: "Add what runs" });
    const add = async (text: string, option: RegExp) => {
      await box.fill(text);
      await page.getByRole("option", { name: option, selected: true }).waitFor();
      await page.keyboard.press("Enter");
      return page.locator("load-line").last();
    };
    const freezer = await add("freezer 55 Ah/day", /^freezer.*660 Wh a day at 12 V/);
    await freezer.getByText("660 Wh").waitFor(); // 55 Ah at 12 V
    expect((await jobOf(page)).loads.at(-1)).toMatchObject({
      name: "freezer",
      watts: 27.5,
      use: [{ from: 0, to: 24 }],
    });
    await add("pump 3 A", /^pump.*36 W at 12 V/);
    await expect.poll(async () => (await jobOf(page)).loads.at(-1)).toMatchObject({ name: "pump", watts: 36 });
    await add("fri", /Wh a day at/);
    await expect.poll(async () => (await jobOf(page)).loads.at(-1)?.kind).toBe("compressor-fridge");
    await expectSameAsSim(page);
  });

  it("say where an inverter is wanted, and so does the answer", async () => {
    await answered(page);
    const box = page.getByRole("combobox", { name: "Add what runs" });
    await box.fill("kettle");
    await page.getByRole("option", { name: /^kettle/i, selected: true }).waitFor();
    await page.keyboard.press("Enter");
    await page
      .locator("load-line")
      .last()
      .getByText("Needs an inverter: not run, and not counted, by As it came")
      .waitFor();
    await page.locator(".sentence", { hasText: "Not running, for want of an inverter: Kettle." }).waitFor();
    await answered(page);
    const without = page.getByRole("row", { name: /^Not running/ }).getByRole("cell");
    expect(await without.allInnerTexts()).toEqual(["Kettle", "Kettle", "–", "Kettle"]);
  });
});

describe("a proposal", () => {
  it("is copied, changed, marked, compared, and undone", async () => {
    await answered(page);
    const before = await jobOf(page);
    await page.getByRole("button", { name: "Copy as a proposal" }).first().click();
    const copied = await jobOf(page);
    expect(copied.setups).toHaveLength(before.setups.length + 1);
    expect({ ...copied.setups[1], id: "", name: "" }).toEqual({ ...before.setups[0], id: "", name: "" });
    await type(page, "setups[1].bank.capacity_Ah", "400");
    const mark = page.locator('value-field:has([data-path="setups[1].bank.capacity_Ah"])');
    expect(await mark.locator(".was").innerText()).toContain(`was ${before.setups[0]!.bank.capacity_Ah}`);
    const answer = await expectSameAsSim(page);
    const days = (i: number) => answer.setups[i]!.days.drawn.p50 ?? answer.horizon_days;
    expect(days(1)).toBeGreaterThan(days(0));
    await undo();
    await undo();
    expect(await jobOf(page)).toEqual(before);
  });
});

it("marks what is new in a proposal, and not the defaults that come with it", async () => {
  await answered(page);
  const marks = (path: string) => page.locator(`value-field:has([data-path="${path}"]) .was`).count();
  expect((await jobOf(page)).setups[1]!.arrays![1]).toMatchObject({ watts: 200 });
  expect(await marks("setups[1].arrays[1].watts")).toBe(1);
  expect(await marks("setups[1].arrays[1].tilt_deg")).toBe(0);
});

describe("a size found", () => {
  it("becomes a proposal with that bank and those panels, and undo takes it back", async () => {
    await answered(page);
    const before = await jobOf(page);
    await page.getByRole("button", { name: /^Find what lasts/ }).click();
    const first = page.locator("the-bench table.points tbody tr").first();
    await first.waitFor({ timeout: 60_000 });
    const cells = [first.locator("th"), first.locator("td").first(), first.locator("td", { hasText: "kg" })];
    const [bank_Ah, array_W, mass_kg] = (await Promise.all(cells.map((cell) => cell.innerText()))).map((text) =>
      Number.parseFloat(text),
    );
    const out = await page.getByText(/bank and panels are taken to weigh \d+ kg and to come out/).innerText();
    await first.getByRole("button", { name: /a proposal/ }).click();
    const { setups } = await jobOf(page);
    expect(setups).toHaveLength(before.setups.length + 1);
    expect(setups.at(-1)!.bank.capacity_Ah).toBe(bank_Ah);
    expect((setups.at(-1)!.arrays ?? []).reduce((sum, { watts }) => sum + watts, 0)).toBe(array_W);
    expect(setups.at(-1)!.mass_kg).toBe(mass_kg! - Number(/\d+(?= kg)/.exec(out)?.[0]));
    expect(setups.at(-1)).not.toHaveProperty("price"); // none is known
    await expectSameAsSim(page);
    await undo();
    expect(await jobOf(page)).toEqual(before);
    const point = page.locator("the-bench [data-point]").first();
    await point.focus();
    await page.keyboard.press("Enter");
    expect((await jobOf(page)).setups).toHaveLength(before.setups.length + 1);
    await undo();
    expect(await jobOf(page)).toEqual(before);
  });
});

describe("what to size for", () => {
  it("is typed beside it, and stands in the job", async () => {
    await answered(page);
    await type(page, "sizing.nights", "4");
    await type(page, "sizing.chance", "80");
    await page.getByRole("button", { name: "Find what lasts 4 nights, 80% sure" }).waitFor();
    expect((await jobOf(page)).sizing).toMatchObject({ nights: 4, chance: 0.8 });
    await type(page, "sizing.nights", "");
    const { nights } = (await jobOf(page)).trip;
    await page.getByRole("button", { name: `Find what lasts ${nights} nights, 80% sure` }).waitFor();
  });
});

describe("both halves of the world", () => {
  it.each([
    ["ushua", /Ushuaia/, "December"],
    ["sodank", /Sodankyl/, "July"],
  ])("answers at %s as the library does", async (typed, name, month) => {
    await answered(page);
    const box = page.getByRole("combobox", { name: "Place" });
    await box.fill(typed);
    await page.getByRole("option", { name }).first().click();
    await page.getByLabel("Month").selectOption({ label: month });
    const answer = await expectSameAsSim(page);
    expect(answer.setups[0]!.sun_Wh_day.available).toBeGreaterThan(0);
    expect(await page.locator("the-bench .sentence").innerText()).toMatch(name);
  });

  it("takes a latitude with a sky, and a point by its coordinates", async () => {
    await answered(page);
    await page.getByLabel("By latitude and sky").check();
    await type(page, "place.latitude", "-33");
    await page.getByLabel("Most days are").selectOption("dull");
    const dull = await expectSameAsSim(page);
    await page.getByLabel("By coordinates").check();
    await type(page, "place.latitude", "-25.5");
    await type(page, "place.longitude", "134");
    const desert = await expectSameAsSim(page);
    expect(desert.setups[0]!.sun_Wh_day.available).toBeGreaterThan(dull.setups[0]!.sun_Wh_day.available);
  });
});

it("answers where the system names a language that is no language tag", async () => {
  await answered(page);
  await page.addInitScript(() => {
    Object.defineProperty(navigator, "language", { value: "en-US@posix" });
    Object.defineProperty(navigator, "languages", { value: ["en-US@posix"] });
  });
  await page.reload();
  await answered(page);
  expect(await page.locator("the-bench .sentence").innerText()).toMatch(/goes flat after [\d.]+/);
});

describe("a place", () => {
  it("that is not known is said to be, and keeps the one before", async () => {
    await answered(page);
    const { place } = await jobOf(page);
    const box = page.getByRole("combobox", { name: "Place" });
    await box.fill("xyzzy");
    await page.getByText("No place of that name is known here").waitFor();
    await page.keyboard.press("Tab");
    expect((await jobOf(page)).place).toEqual(place);
  });

  it("is taken on leaving the box where only one begins so, and not where several do", async () => {
    await answered(page);
    const { place } = await jobOf(page);
    const box = page.getByRole("combobox", { name: "Place" });
    await box.fill("south");
    await page.getByRole("option").nth(1).waitFor();
    await page.keyboard.press("Tab");
    expect((await jobOf(page)).place).toEqual(place);
    await box.fill("upington");
    await page.getByRole("option", { name: /Upington/ }).waitFor();
    await page.keyboard.press("Tab");
    expect((await jobOf(page)).place).toEqual({ id: "za-upington" });
  });

  it("asks for a longitude that is not known, and assumes none", async () => {
    await answered(page);
    await page.getByLabel("By latitude and sky").check();
    await answered(page);
    await page.getByLabel("By coordinates").check();
    await answered(page, "faults");
    expect((await jobOf(page)).place).toMatchObject({ longitude: null });
    const field = page.locator('value-field:has([data-path="place.longitude"])');
    expect(await field.locator(".fault").innerText()).toContain("Needed: a number from -180 to 180");
    await type(page, "place.longitude", "146.25");
    await expectSameAsSim(page);
    await type(page, "place.longitude", "");
    await field.locator(".fault").waitFor();
  });
});

describe("a faulty edit", () => {
  it("keeps what was typed, says what is accepted at the blank, and leaves the last good answer standing", async () => {
    await answered(page);
    const said = await page.locator("the-bench .sentence").innerText();
    for (const wrong of ["lots", "-5", "9e99", "NaN", "12 parsecs"]) {
      await type(page, "setups[0].bank.capacity_Ah", wrong);
      await answered(page, "faults");
      const field = page.locator('value-field:has([data-path="setups[0].bank.capacity_Ah"])');
      await field.locator(".fault").waitFor();
      expect(await field.locator(".fault").innerText()).toMatch(/Accepted: .*(5 to 5000|Ah)/);
      expect(await field.locator("input").inputValue()).toBe(wrong);
      expect(await field.locator("input").getAttribute("aria-invalid")).toBe("true");
      expect(await page.locator("the-bench .sentence").innerText()).toBe(said);
      expect((await page.locator("the-bench").innerText()).replace(wrong, "")).not.toContain("NaN");
    }
    await type(page, "setups[0].bank.capacity_Ah", "180");
    await expectSameAsSim(page);
    expect(await page.locator(".fault", { hasText: /\S/ }).count()).toBe(0);
  });
});

describe("the working", () => {
  it("opens to inputs, equations with their sources, and what a tenth more of each assumption does", async () => {
    await answered(page);
    await page.getByText("How the days come about").click();
    const working = page.locator("details.working").first();
    expect(await working.innerText()).toMatch(/kWh\/m²/);
    await working.getByRole("button", { name: "Turn each assumption up a tenth" }).click();
    await working.locator("table").waitFor({ timeout: 60_000 });
    const rows = await working.locator("tbody tr").allInnerTexts();
    expect(rows.length).toBeGreaterThan(4);
    expect(rows.join("\n")).toMatch(/Capacity of the bank/);
  });
});
