import { parseQuantity } from "@stayput/job/quantities";

/** A load typed free-hand, with its draw or its use in a day: "freezer 55 Ah/day", "heater 3 A". */
export interface TypedLoad {
  /** "" where only a quantity was typed */
  readonly name: string;
  readonly watts: number;
  /** its use was given by the day, and is spread over all of it */
  readonly allDay: boolean;
  /** what it comes to: "27.5 W day and night, 660 Wh a day" */
  readonly said: string;
}

/** The first quantity in a text that runs to its end; null where there is none. Figures within a name are no quantity. */
export function typedLoad(text: string, volts_V: number): TypedLoad | null {
  for (const { index } of text.matchAll(/(?<![\d.,])\d/g)) {
    const name = text.slice(0, index).replace(/[\s,:;–-]+$/, "");
    const load = drawing(text.slice(index).trim(), volts_V);
    if (load !== null) return { name: name.trim(), ...load };
  }
  return null;
}

function drawing(amount: string, volts_V: number): Omit<TypedLoad, "name"> | null {
  if (!/[a-z]/i.test(amount)) return null; // a bare number may be a size
  const power = parseQuantity(amount, "power_W", { volts_V });
  if (power.ok && power.value > 0) {
    const watts = rounded(power.value);
    return { watts, allDay: false, said: `${watts} W${throughVolts(power, volts_V)}, from 18:00 to 22:00` };
  }
  const energy = parseQuantity(amount, "energy_Wh_day", { volts_V });
  if (!energy.ok || !(energy.value > 0)) return null;
  const watts = rounded(energy.value / 24);
  const day = `${rounded(energy.value)} Wh a day${throughVolts(energy, volts_V)}`;
  return { watts, allDay: true, said: `${day}, ${Number(watts.toPrecision(3))} W day and night` };
}

const throughVolts = ({ assumption = "" }: { readonly assumption?: string }, volts_V: number): string =>
  assumption.includes(` ${volts_V} V`) ? ` at ${volts_V} V` : "";

const rounded = (value: number): number => Number(value.toPrecision(6));
