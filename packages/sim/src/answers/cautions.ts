import type { SetupPlan } from "../stay/index.ts";
import type { Load, Setup } from "../study.ts";
import type { Caution } from "./types.ts";
import { feedCautions } from "./solvedWiring.ts";

/** Following the wires takes as long as a few skies, and no sky changes what is found: kept for as long as the plan is. */
const known = new WeakMap<SetupPlan, readonly Caution[]>();

/** What the person must be told of a setup, each once. */
export function cautionsOf(setupPlan: SetupPlan): readonly Caution[] {
  const found = known.get(setupPlan) ?? cautionsFor(setupPlan);
  known.set(setupPlan, found);
  return found;
}

function cautionsFor({ setup, bank, plan }: SetupPlan): Caution[] {
  const cautions: Caution[] = [];
  const say = (code: string, text: string) => cautions.push({ code, text });
  const stranded = strandedLoads(setup);
  if (stranded.length > 0) {
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
  const waiting = waitingOnInverter(setup);
  if (waiting.length > 0 && setup.inverter !== null) {
    const lost_Wh = Math.round(setup.inverter.idle_W * 24);
    say(
      "inverter-kept-on",
      `The standby draw of ${waiting.join(", ")} keeps the inverter on all day: about ${lost_Wh} Wh a day for the inverter alone. Switched off at the plug, the inverter rests too.`,
    );
  }
  const charge_A = largestCharge_A(setup);
  const advised_C = bank.chemistry.advised_C;
  const advised_A = advised_C === null ? Infinity : advised_C * setup.bank.capacity_Ah;
  if (charge_A > advised_A) {
    say(
      "charge-over-advised",
      `Up to ${Math.round(charge_A)} A of charging is more than makers usually advise for ${bank.chemistry.name} of this size, about ${Math.round(advised_A)} A: ask the maker's limit.`,
    );
  }
  return [...cautions, ...feedCautions(setup, bank.temp_C)];
}

/** Loads of a setup that it cannot run from the bank, for want of an inverter. */
export const strandedLoads = ({ inverter, loads }: Setup): readonly Load[] =>
  inverter !== null
    ? []
    : loads.filter((load) => (load.kind === "absorption-fridge" ? load.burns === "ac" : load.supply === "ac"));

/** Names of what draws a little through an inverter that would otherwise be off. */
const waitingOnInverter = ({ inverter, loads }: Setup): string[] =>
  inverter === null || inverter.on === "always" || inverter.idle_W === 0
    ? []
    : loads.flatMap((load) =>
        load.kind === "appliance" && load.supply === "ac" && load.count > 0 && load.standby_W > 0 ? [load.name] : [],
      );

/** The most that any one source can push at a full charger's rating: sun, feed, mains [A]. */
function largestCharge_A({ arrays, bank, solarCharger, feed, mainsCharger }: Setup): number {
  const watts = arrays.reduce((sum, array) => sum + array.watts, 0);
  const sun_A = solarCharger === null ? 0 : Math.min(solarCharger.rated_A, watts / bank.nominal_V);
  const feed_A = feed?.kind === "converter" ? Math.min(feed.rated_A * feed.count, feed.source.spare_A) : 0;
  return Math.max(sun_A, feed_A, mainsCharger?.rated_A ?? 0);
}
