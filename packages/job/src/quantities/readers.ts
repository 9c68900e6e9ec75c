import { conductorNamed } from "@stayput/sim";
import type { Dimension } from "../schema/leaf.ts";
import { crumbless } from "./number.ts";
import { clockIn_h, durationIn_h } from "./time.ts";
import { readUnit, valueIn } from "./unit.ts";

export interface Volts {
  readonly value_V: number;
  /** given with the quantity itself, as in "3 A at 24 V" */
  readonly given: boolean;
}

export interface Reading {
  readonly value: number;
  readonly assumption?: string;
}

/** How one kind of quantity is read, and the words for what it accepts. */
export interface Reader {
  readonly unit: string;
  readonly accepted: string;
  readonly read: (text: string, volts: Volts) => Reading | null;
}

const only = (value: number | null): Reading | null => (value === null ? null : { value });
const inUnit = (unit: string) => (text: string) => {
  const read = readUnit(text);
  return read === null ? null : only(valueIn(read, unit));
};

/** Through the volts: amps to watts and back. What is given in the field's own kind needs no volts. */
function through(text: string, own: string, other: string, volts: Volts, factor: number): Reading | null {
  const read = readUnit(text);
  if (read === null) return null;
  const straight = valueIn(read, own);
  if (straight !== null)
    return { value: straight, ...(/VA\b/i.test(text) ? { assumption: "1 VA is taken as 1 W" } : {}) };
  const across = valueIn(read, other);
  if (across === null) return null;
  const value = crumbless(across * factor);
  return volts.given
    ? { value }
    : {
        value,
        assumption: `${text.trim()} is taken at ${volts.value_V} V, which makes ${Number(value.toPrecision(4))} ${own}`,
      };
}

const perDay = /\s*(?:\/\s*(?:day|d|24\s*h)|(?:per|a)\s+day|daily)$/i;

/** An amount of something in a day. Without "a day" it is taken as a day's, and said so. */
function inADay(text: string, amount: (text: string) => Reading | null, unit: string): Reading | null {
  const rate = /^(.*)\/\s*(week|month|year|yr|hour|h)$/i.exec(text.trim());
  if (rate !== null) return scaled(amount(rate[1]!), days[rate[2]!.toLowerCase()]!);
  const daily = perDay.test(text);
  const read = amount(text.replace(perDay, ""));
  if (read === null || daily) return read;
  const assumption = `${text.trim()} is taken as a day's, ${read.value} ${unit}`;
  return { value: read.value, assumption: [read.assumption, assumption].filter(Boolean).join("; ") };
}

/** Days in a while: a month is a twelfth of 365.25 days. */
const days: Readonly<Record<string, number>> = {
  week: 7,
  month: 30.4375,
  year: 365.25,
  yr: 365.25,
  hour: 1 / 24,
  h: 1 / 24,
};

const scaled = (read: Reading | null, over: number): Reading | null =>
  read === null ? null : { ...read, value: crumbless(read.value / over) };

function share(text: string): Reading | null {
  const parts = /^(\d+(?:\.\d+)?)\s*(?:%|percent|per cent)$/i.exec(text.trim());
  return parts === null ? null : { value: crumbless(Number(parts[1]) / 100) };
}

function copper(text: string): Reading | null {
  try {
    const { area_mm2, trap } = conductorNamed(text);
    return { value: crumbless(area_mm2), ...(trap === null ? {} : { assumption: trap }) };
  } catch {
    return inUnit("mm2")(text);
  }
}

/** A difference has no zero: a degree Celsius is a kelvin, and a degree Fahrenheit five ninths of one. */
function difference(text: string): Reading | null {
  const fahrenheit = /^(.*?)\s*°?\s*(?:deg)?F$/i.exec(text.trim());
  const read = readUnit(fahrenheit === null ? text.replace(/°?\s*(?:deg)?C$/i, " K") : `${fahrenheit[1]} K`);
  const kelvin = read === null ? null : valueIn(read, "K");
  return kelvin === null ? null : { value: crumbless(fahrenheit === null ? kelvin : (kelvin * 5) / 9) };
}

/** "25 C" is a temperature here, not a charge. */
const temperature = (text: string): Reading | null => inUnit("degC")(text.replace(/(\d)\s*([CF])$/, "$1 deg$2"));

const power = (text: string, v: Volts): Reading | null => through(text, "W", "A", v, v.value_V);
const energy = (text: string, v: Volts): Reading | null => through(text, "Wh", "Ah", v, v.value_V);

const reader = (unit: string, accepted: string, read: Reader["read"]): Reader => ({ unit, accepted, read });
const simple = (unit: string, accepted: string, mathUnit = unit): Reader => reader(unit, accepted, inUnit(mathUnit));

export const readers: Readonly<Record<Dimension, Reader>> = {
  current_A: reader("A", 'amps, or watts, such as "30 A" or "400 W"', (text, v) =>
    through(text, "A", "W", v, 1 / v.value_V),
  ),
  power_W: reader("W", 'a running draw in watts or amps, such as "60 W", "1.5 kW" or "3 A"', power),
  volts_V: simple("V", 'volts, such as "14.2 V"'),
  charge_Ah: reader("Ah", 'amp-hours, or watt-hours, such as "200 Ah" or "2.4 kWh"', (text, v) =>
    through(text, "Ah", "Wh", v, 1 / v.value_V),
  ),
  energy_Wh_day: reader("Wh/day", 'energy in a day, such as "720 Wh/day", "1.2 kWh/day" or "55 Ah/day"', (text, v) =>
    inADay(text, (amount) => energy(amount, v), "Wh"),
  ),
  length_m: simple("m", 'a length, such as "7 m" or "23 ft"'),
  area_mm2: reader("mm2", 'copper, such as "6 mm2", "10 AWG", "8 B&S" or "6 mm auto"', copper),
  diameter_mm: reader("mm", 'a diameter, such as "6 mm"', (text) =>
    inUnit("mm")(text.replace(/\s*auto(?:motive)?$/i, "")),
  ),
  resistance_mOhm: simple("mOhm", 'a resistance, such as "0.5 mOhm"', "mohm"),
  temperature_C: reader("°C", 'a temperature, such as "25 °C" or "77 °F"', temperature),
  difference_K: reader("K", 'a difference of temperature, such as "6 K" or "6 °C"', difference),
  angle_deg: simple("°", 'an angle, such as "10 deg"', "deg"),
  duration_h: reader("h", 'a time, such as "3.5 h", "2 h 30" or "90 min"', (text) => only(durationIn_h(text))),
  minutes: reader("min", 'a time, such as "5 min" or "0.5 h"', (text) => {
    const hours = durationIn_h(text);
    return hours === null ? null : { value: crumbless(hours * 60) };
  }),
  clock_h: reader("h", 'an hour of the clock, such as "18:30" or "6 pm"; midnight is 0 or 24', (text) =>
    only(clockIn_h(text)),
  ),
  share: reader("share", 'a share, such as "60 %" or 0.6', share),
  mass_kg: simple("kg", 'a mass, such as "26 kg"'),
  mass_kg_day: reader("kg/day", 'a mass in a day, such as "2 kg/day"', (text) => inADay(text, inUnit("kg"), "kg")),
  gas_g_day: reader("g/day", 'gas in a day, such as "270 g/day"', (text) => inADay(text, inUnit("g"), "g")),
  volume_L: simple("L", 'a volume, such as "188 L"'),
  height_m: simple("m", 'a height, such as "830 m" or "2700 ft"'),
};
