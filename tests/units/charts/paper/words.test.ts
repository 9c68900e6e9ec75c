import { describe, expect, it } from "vitest";
import {
  chanceInWords,
  sayClock,
  sayDays,
  sayDaysShort,
  sayHourOf,
  sayList,
  sayMoment,
  sayMonth,
  sayPercent,
  sayRange,
  saySigned,
  sayWh,
} from "@stayput/charts";

const plain = (text: string) => text.replaceAll("\u00a0", " ");

describe("days", () => {
  it.each([
    [2.57, "2.6 days"],
    [1, "1 day"],
    [1.04, "1 day"],
    [0, "0 days"],
    [9.94, "9.9 days"],
    [9.96, "10 days"],
    [14.4, "14 days"],
    [null, "60 days or more"],
  ])("%s is said as %s", (days, said) => expect(plain(sayDays(days, 60))).toBe(said));
  it("follows the horizon and the locale", () => {
    expect(plain(sayDays(null, 30))).toBe("30 days or more");
    expect(plain(sayDays(2.57, 60, "de"))).toBe("2,6 days");
    expect(sayDaysShort(null, 60)).toBe("60+");
  });
  it.each([
    [2.1, 3.4, "2.1 to 3.4 days"],
    [4.8, null, "4.8 to 60 days or more"],
    [null, null, "60 days or more"],
    [0.31, 0.32, "0.3 days"],
  ])("%s to %s is said as %s", (p10, p90, said) => expect(plain(sayRange(p10, p90, 60))).toBe(said));
});

it("a chance in a sentence has no signs in it", () => {
  expect(["en", "de"].map((locale) => plain(chanceInWords(0, locale)))).toEqual(["under 1%", "under 1 %"]);
  expect(chanceInWords(1)).toBe("over 99%");
  expect(chanceInWords(0.87)).toBe("87%");
});

describe("moments", () => {
  // arrival at 15:00: 2.57 days is 61.68 h, so 04:40 towards the third morning
  it.each([
    [2.57, "night 3, 04:40"],
    [2.37, "night 3, 23:50"],
    [2.12, "after night 2, 17:50"],
    [2.125, "night 3, 18:00"],
    [2.63, "after night 3, 06:10"],
    [0, "arrival day, 15:00"],
    [0.3749, "night 1, 00:00"],
    [0.37, "night 1, 23:50"],
    [1, "after night 1, 15:00"],
  ])("%s days is %s", (days, said) => expect(sayMoment(days)).toBe(said));
  it("takes another hour of arrival", () => {
    expect(sayMoment(0.5, 10)).toBe("night 1, 22:00");
    expect(sayMoment(0.1, 1)).toBe("arrival day, 03:20");
    expect(sayMoment(0.75, 1)).toBe("night 1, 19:00");
  });
  it("says the hour alone", () => expect(sayHourOf(2.57)).toBe("04:40"));
  it.each([
    [0, "00:00"],
    [23.75, "23:45"],
    [24, "00:00"],
    [23.9999, "00:00"],
  ])("clock hour %s is %s", (hour, said) => expect(sayClock(hour)).toBe(said));
});

it("writes figures in the reader's locale", () => {
  expect(plain(sayWh(812))).toBe("812 Wh");
  expect(plain(sayWh(1234, "de"))).toBe("1.234 Wh");
  expect(plain(sayWh(12_340))).toBe("12.3 kWh");
  expect(sayPercent(0.5)).toBe("50%");
  expect(saySigned(-0.27)).toBe("\u22120.3");
  expect(saySigned(1.2)).toBe("+1.2");
  expect(sayMonth(3, "fr", "long")).toBe("mars");
  expect(sayList(["a", "b", "c"])).toBe("a, b and c");
});
