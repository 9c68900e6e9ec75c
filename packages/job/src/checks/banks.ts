import { bankDefaults } from "../defaults.ts";
import { asFields, asList } from "../faults/at.ts";
import type { Found } from "../faults/fault.ts";
import { crumbless } from "../quantities/number.ts";
import { num, part, parts, type Part } from "./read.ts";

/** What is plausible for each 12 V of a bank. */
const per12V = { cutOff_V: [9, 13.2], absorption_V: [13, 15.5] } as const;

/** A bank's volts fit its nominal volts, and its rested curve rises. */
export function bankFaults(job: unknown): Found[] {
  return parts(job, "setups").flatMap((setup) => {
    const bank = part(job, ...setup.keys, "bank");
    return bank === null ? [] : [...volts(bank), ...curve(bank)];
  });
}

/** A bank's nominal volts, given or usual; NaN where what is given is no number. */
export const nominalOf_V = (bank: Part | null): number =>
  bank !== null && "nominal_V" in bank.fields ? num(bank.fields, "nominal_V") : bankDefaults.nominal_V;

function volts(bank: Part): Found[] {
  const { keys, fields } = bank;
  const nominal_V = nominalOf_V(bank);
  return (["cutOff_V", "absorption_V"] as const).flatMap((key) => {
    const [least, most] = per12V[key].map((each) => crumbless((each * nominal_V) / 12)) as [number, number];
    const value = num(fields, key);
    if (!(value < least || value > most)) return [];
    const accepted = `${least} to ${most} V for a ${nominal_V} V bank`;
    return [{ keys: [...keys, key], given: `${value}`, accepted, restsOn: [[...keys, "nominal_V"]] }];
  });
}

function curve({ keys, fields }: Part): Found[] {
  const points = asList(fields["restedVolts"]).map(asFields);
  return points.slice(1).flatMap((point, i) => {
    const before = points[i]!;
    const falls = num(point, "share") <= num(before, "share") || num(point, "volts") < num(before, "volts");
    if (!falls) return [];
    const given = `share ${num(point, "share")}, ${num(point, "volts")} V`;
    const here = [...keys, "restedVolts"];
    const restsOn = [i, i + 1].flatMap((n) => [
      [...here, n, "share"],
      [...here, n, "volts"],
    ]);
    const accepted = "a larger share and no fewer volts than the point before";
    return [{ keys: [...here, i + 1], given, accepted, restsOn }];
  });
}
