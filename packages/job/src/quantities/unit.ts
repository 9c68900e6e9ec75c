import { create, UnitDependencies, type Unit } from "mathjs";
import { crumbless } from "./number.ts";

/** Only the class of units: no expression parser, no functions, so a text can name units and nothing else. */
const math = create({ UnitDependencies: UnitDependencies! }, {});
const Units = math.Unit as unknown as { parse(text: string): Unit; isValuelessUnit(name: string): boolean };

/** Units as people write them, by their lower case, where mathjs spells them otherwise. */
const spellings: Readonly<Record<string, string>> = {
  w: "W",
  kw: "kW",
  wp: "W",
  va: "VA",
  a: "A",
  ma: "mA",
  amps: "A",
  v: "V",
  mv: "mV",
  ah: "Ah",
  mah: "mAh",
  wh: "Wh",
  kwh: "kWh",
  h: "h",
  ohm: "ohm",
  mohm: "mohm",
  metre: "meter",
  metres: "meters",
  kg: "kg",
  g: "g",
  l: "L",
  ltr: "L",
  k: "K",
  degc: "degC",
  degf: "degF",
};

/** Signs that stand for units. */
const signs: readonly (readonly [RegExp, string])[] = [
  [/[\u2126\u03A9]/g, "ohm"],
  [/²/g, "2"],
  [/°\s*C/gi, "degC"],
  [/°\s*F/gi, "degF"],
  [/°/g, "deg"],
  [/\u2212/g, "-"],
];

/**
 * A number with its unit, such as "3 A" or "6 mm²"; null where it is none. Units only: products and quotients of them,
 * nothing that could be worked out.
 */
export function readUnit(text: string): Unit | null {
  const plain = signs.reduce((said, [sign, word]) => said.replace(sign, word), text.trim());
  const parts = /^([-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[-+]?\d{1,3})?)\s*([A-Za-z][A-Za-z0-9^*\s]*)$/i.exec(plain);
  if (parts === null) return null;
  const unit = parts[2]!.replace(/[A-Za-z]+/g, spelt);
  try {
    const read = Units.parse(`${parts[1]} ${unit}`);
    return Number.isFinite(read.toSI().toNumber()) ? read : null;
  } catch {
    return null;
  }
}

/** A unit as mathjs spells it. What it knows already stays, so that mega is never read as milli. */
function spelt(word: string): string {
  if (Units.isValuelessUnit(word)) return word;
  return spellings[word.toLowerCase()] ?? word.toLowerCase();
}

/** The value in a unit, rounded past the twelfth digit where units leave crumbs; null where it is of another kind. */
export function valueIn(read: Unit, unit: string): number | null {
  try {
    return crumbless(read.toNumber(unit));
  } catch {
    return null;
  }
}
