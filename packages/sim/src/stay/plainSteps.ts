import { roughlyStored_A, stored_A } from "../bank/acceptance.ts";
import { atShare, chargeWhenShown_Ah, resistanceAt_Ohm, shownCharge } from "../bank/bankModel.ts";
import { resistanceGrowth } from "../bank/chemistries.ts";
import type { Drive } from "./drive.ts";
import type { RunState } from "./runState.ts";

/**
 * Takes a run on through the steps in which nothing happens: camped, loads that are powers, the charger within its rating,
 * nothing dropping or coming back, the reserve not being passed. The same closed form as `oneStep`, which takes whatever
 * step this one stops before; a law holds the two together. Nearly every hour of every sky goes through here, so it keeps
 * its state in locals and allocates nothing.
 */
export function plainSteps(drive: Drive, state: RunState, steps: number, shown: Float32Array | null): void {
  const { bank, load_W, sun, kept, mixed, sunMost_A, sunTracks } = drive;
  const { full_Ah, perFull, volts, cutOff_V, returns_V, gap_V, absorption_V, perGuessed_V } = bank;
  const { step_h, e, gain, perAmp_h } = bank.tank;
  const { step_h: half_h, e: halfE, gain: halfGain, perAmp_h: halfPerAmp_h } = bank.halves[0]!;
  const stepsAnHour = Math.round(1 / step_h);
  const available_Ah = bank.c * full_Ah;
  const perAvailable = 1 / available_Ah;
  const perAbsorption_V = 1 / absorption_V;
  const reserve_Ah = state.reserve_h >= 0 ? -Infinity : chargeWhenShown_Ah(bank, bank.reserve);
  const keeps = 1 - bank.stepLoss;
  const mostResistance_Ohm = bank.resistance_Ohm * resistanceGrowth.times;
  const { on } = state;
  let { q1, q2, lowest_Ah, lowestStep, steps: s } = state;

  for (; s < steps; s++) {
    const h = stepsAnHour === 1 ? s : (s / stepsAnHour) | 0;
    if (mixed !== null && mixed.parked[h]! < 1) break;
    const q = q1 + q2;
    const light = sun[h]! * kept[h]!;
    const sun_A = sunTracks ? 0 : light;
    const net_W = (on ? load_W[h]! : 0) - (sunTracks ? light : 0);

    const guess_A = net_W * perGuessed_V - sun_A;
    const moved_A = guess_A < 0 ? -roughlyStored_A(bank, q, -guess_A) : guess_A;

    const charge = (q - moved_A * half_h) * perFull;
    const halfway_V = atShare(volts, (q1 * halfE + q * halfGain - moved_A * halfPerAmp_h) * perAvailable);
    const resistance_Ohm = resistanceAt_Ohm(bank, charge);
    const behind_V = net_W < sun_A * halfway_V ? halfway_V + gap_V : halfway_V;
    const driven_V = behind_V + resistance_Ohm * sun_A;
    const square = driven_V * driven_V - 4 * resistance_Ohm * net_W;
    if (!(square > 0)) break;
    let volts_V = 0.5 * (driven_V + Math.sqrt(square));
    // Watts over volts, and written so that the division need not wait for the root.
    let net_A = (behind_V - volts_V) * (1 / resistance_Ohm);
    if (volts_V > absorption_V && net_A < 0) {
      volts_V = absorption_V;
      net_A = net_W * perAbsorption_V - sun_A;
    }
    if (sunTracks && light > sunMost_A * (volts_V < halfway_V ? volts_V : halfway_V)) break;
    if (net_A < 0) net_A = -stored_A(bank, q, charge, -net_A);

    const n = q - net_A * step_h;
    let n1 = q1 * e + q * gain - net_A * perAmp_h;
    if (n1 > available_Ah) n1 = available_Ah;
    const rested_V = atShare(volts, n1 * perAvailable);
    if (n <= reserve_Ah) break;
    // Held against the most resistance there is: what fails that may still hold, and oneStep looks closer.
    if (net_A > 0) {
      if (n1 <= 0 || rested_V - net_A * mostResistance_Ohm < cutOff_V) break;
    } else if (!on && rested_V + (net_A < 0 ? gap_V - net_A * mostResistance_Ohm : 0) >= returns_V) break;
    if (n < lowest_Ah) {
      lowest_Ah = n;
      lowestStep = s + 1;
    }
    q1 = n1 * keeps;
    q2 = (n - n1) * keeps;
    if (shown !== null) shown[s + 1] = shownCharge(bank, q1 + q2);
  }
  state.steps = s;
  state.q1 = q1;
  state.q2 = q2;
  state.lowest_Ah = lowest_Ah;
  state.lowestStep = lowestStep;
}
