import type { SetupPlan } from "../stay/index.ts";
import type { Caution } from "./types.ts";
import { feedCautions } from "./wiring.ts";

/** What the person must be told of a setup, each once. */
export function cautionsOf({ setup, bank, plan }: SetupPlan): Caution[] {
  const cautions: Caution[] = [];
  const say = (code: string, text: string) => cautions.push({ code, text });
  const stranded = setup.loads.filter((load) =>
    load.kind !== "absorption-fridge" ? load.supply === "ac" : load.burns === "ac",
  );
  if (setup.inverter === null && stranded.length > 0) {
    say(
      "no-inverter",
      `${stranded.map(({ name }) => name).join(", ")} cannot run from the bank: there is no inverter. Not counted in the days.`,
    );
  }
  if (setup.arrays.length > 0 && setup.solarCharger === null) {
    say("no-solar-charger", "There are panels but no solar charger: their sun is not counted.");
  }
  if (!bank.takesCharge) {
    say(
      "too-cold",
      `Lithium takes no charge below 0 °C, and the bank stands at about ${Math.round(bank.temp_C)} °C in this month: no charging is counted.`,
    );
  }
  if (plan.trip.drives !== null && setup.feed === null) {
    say("no-feed", "The trip has driving days but no charge feed from the vehicle: driving adds nothing.");
  }
  return [...cautions, ...feedCautions(setup, bank.temp_C)];
}
