import { roughlyStored_A, stored_A } from "../bank/acceptance.ts";
import { resistanceAt_Ohm } from "../bank/bankModel.ts";
import { resistanceGrowth } from "../bank/chemistries.ts";
import { availableAfter_Ah } from "../bank/twoTanks.ts";
import type { Drive } from "./drive.ts";
import type { RunState } from "./runState.ts";

/**
 * Takes a run on through steps that have a closed form: hours of one part, loads that are powers, the charger within its
 * rating, a feed that does not depend on the bank. It is that of `oneStep`, which takes whatever step this one stops
 * before; a law holds the two together. Nearly every hour of every sky goes through here, so it keeps its state in locals
 * and allocates nothing.
 * @returns whether the step that it stopped before is settled, its current in `state`, and has only to be ended
 */
export function plainSteps(drive: Drive, state: RunState, steps: number, held_Ah: Float64Array | null): boolean {
  const { bank, sun, kept, mixed, sunTracks, sunMost_A: rated_A } = drive;
  const loads = drive.loads.both;
  const elementsFrom = loads.length >> 1;
  const { perFull, nominal_V, cutOff_V, returns_V, gap_V, absorption_V, perGuessed_V, available_Ah, tank } = bank;
  const { volts, stepsAnHour } = bank;
  const half = bank.halves[0]!;
  const keeps = 1 - bank.stepLoss;
  const mostResistance_Ohm = bank.resistance_Ohm * resistanceGrowth.times;
  // A factor and not a choice, which the loop would have to make at every step.
  const asWatts = sunTracks ? 1 : 0;
  const sunMost_A = sunTracks ? rated_A : Infinity;
  const plainMost_A = sunTracks ? Infinity : rated_A;
  const plainDriving = mixed !== null && mixed.steadyFeed_A >= 0;
  const powered = state.on ? 1 : 0;
  const perSquare = powered / (nominal_V * nominal_V);
  const reserve_Ah = state.reserve_h >= 0 ? -Infinity : bank.reserve_Ah;
  let { q1, q, lowest_Ah, lowestStep, steps: s } = state;
  let settled = false;
  let net_A = 0;

  for (; s < steps; s++) {
    const h = stepsAnHour === 1 ? s : (s / stepsAnHour) | 0;
    let asked_W = loads[h]!;
    let element_W = loads[h + elementsFrom]!;
    let light = sun[h]! * kept[h]!;
    let extra_A = 0;
    if (mixed !== null && mixed.parked[h]! < 1) {
      if (mixed.driving[h]! >= 1 && plainDriving) {
        asked_W = mixed.drivingLoads.load_W[h]!;
        element_W = mixed.drivingLoads.element_W[h]!;
        light = sun[h]!;
        extra_A = mixed.steadyFeed_A;
      } else if (mixed.mains[h]! >= 1) {
        asked_W = mixed.mainsLoads.load_W[h]!;
        element_W = mixed.mainsLoads.element_W[h]!;
        extra_A = mixed.mainsMost_A;
      } else break;
    }
    const given_A = (light < plainMost_A ? light : plainMost_A) * (1 - asWatts) + extra_A;
    const net_W = asked_W * powered - light * asWatts;
    const element_S = element_W * perSquare;

    net_A = 0;
    if (net_W !== 0 || given_A !== 0 || element_S !== 0) {
      const guess_A = net_W * perGuessed_V + element_S * nominal_V - given_A;
      const moved_A = guess_A < 0 ? -roughlyStored_A(bank, q, -guess_A) : guess_A;

      const charge = (q - moved_A * half.step_h) * perFull;
      const halfway_V = volts.at(availableAfter_Ah(half, q1, q, moved_A));
      const resistance_Ohm = resistanceAt_Ohm(bank, charge);
      const behind_V = net_W < (given_A - element_S * halfway_V) * halfway_V ? halfway_V + gap_V : halfway_V;
      const rise_V = resistance_Ohm * given_A;
      const driven_V = behind_V + rise_V;
      const leak = resistance_Ohm * element_S;
      const square = driven_V * driven_V - 4 * (1 + leak) * (resistance_Ohm * net_W);
      if (!(square > 0)) break;
      // What the upper root leaves of the volts behind the resistance, and written so that no division waits for the root.
      net_A = (behind_V * (1 + 2 * leak) - rise_V - Math.sqrt(square)) * (0.5 / (resistance_Ohm * (1 + leak)));
      let volts_V = behind_V - net_A * resistance_Ohm;
      if (volts_V > absorption_V && net_A < 0) {
        volts_V = absorption_V;
        net_A = net_W / absorption_V + element_S * absorption_V - given_A;
      }
      if (light > sunMost_A * (volts_V < halfway_V ? volts_V : halfway_V)) break;
      if (net_A < 0) net_A = -stored_A(bank, q, charge, -net_A);
      else if (behind_V > halfway_V) net_A = 0;
    }

    const n = q - net_A * tank.step_h;
    let n1 = availableAfter_Ah(tank, q1, q, net_A);
    if (n1 > available_Ah) n1 = available_Ah;
    const rested_V = volts.at(n1);
    // Held against the most resistance there is: where that may be too much, endStep looks closer.
    const most_V = net_A * mostResistance_Ohm;
    settled =
      n <= reserve_Ah ||
      (net_A > 0
        ? n1 <= 0 || rested_V - most_V < cutOff_V
        : powered === 0 && rested_V + (net_A < 0 ? gap_V - most_V : 0) >= returns_V);
    if (settled) break;
    if (n < lowest_Ah) {
      lowest_Ah = n;
      lowestStep = s + 1;
    }
    q1 = n1 * keeps;
    q = n * keeps;
    if (held_Ah !== null) held_Ah[s + 1] = q;
  }
  state.steps = s;
  state.net_A = net_A;
  state.q1 = q1;
  state.q = q;
  state.lowest_Ah = lowest_Ah;
  state.lowestStep = lowestStep;
  return settled;
}
