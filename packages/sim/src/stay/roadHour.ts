import { acceptanceAtLoss_A, roughlyStored_A } from "../bank/acceptance.ts";
import { hourOf, resistanceAt_Ohm } from "../bank/bankModel.ts";
import { availableAfter_Ah } from "../bank/twoTanks.ts";
import type { Drive, MixedHours } from "./drive.ts";
import { noFeed } from "./inShape.ts";
import type { RunState } from "./runState.ts";

/**
 * Puts the net amps of a step in which all or a part is driven into `state`. They are those that `settleStep` comes to, and
 * what a relay passes is told in `meetRelay`; but here all is in one function and in locals, as `plainSteps` has the plain
 * hours: numbers that go to and fro between functions and objects cost more than reckoning them does. Left to `settleStep`
 * are steps in which the charger clips the sun, a relay gives all that the source spares or brings the bank to its
 * absorption volts, the bank cannot give what is asked, and those with some mains.
 * @returns whether it is done
 */
export function roadHour(drive: Drive, mixed: MixedHours, state: RunState): boolean {
  const { bank, sunTracks } = drive;
  const h = hourOf(bank, state.steps);
  const parked = mixed.parked[h]!;
  const driving = mixed.driving[h]!;
  if (!(driving > 0) || mixed.mains[h]! > 0) return false;
  const { volts, tank, gap_V, absorption_V, weakTakenUp_per_h: weak } = bank;
  const { sources, spare_A, resistance_Ohm: path_Ohm, converter } = mixed.feed ?? noFeed;
  const rated_A = converter === null ? 0 : converter.rated_A;
  const { q1, q } = state;
  const { nominal_V } = bank;
  const on = state.on ? 1 : 0;
  const asWatts = sunTracks ? 1 : 0;
  const asAmps = 1 - asWatts;
  const sunMost_A = sunTracks ? drive.sunMost_A : Infinity;
  const plainMost_A = sunTracks ? Infinity : drive.sunMost_A;
  const open = Math.min(drive.sun[h]!, plainMost_A);
  const shaded = Math.min(drive.sun[h]! * drive.kept[h]!, plainMost_A);
  const camped_W = on * drive.loads.load_W[h]! - shaded * asWatts;
  const driven_W = on * mixed.drivingLoads.load_W[h]! - open * asWatts;
  const perSquare = on / (nominal_V * nominal_V);
  const camped_S = perSquare * drive.loads.element_W[h]!;
  const driven_S = perSquare * mixed.drivingLoads.element_W[h]!;

  const atRest_Ah = availableAfter_Ah(tank, q1, q, 0);
  const idle_V = volts.at(atRest_Ah) + gap_V;
  let guess_A = (parked * camped_W + driving * driven_W) * bank.perGuessed_V;
  guess_A += (parked * camped_S + driving * driven_S) * nominal_V - (parked * shaded + driving * open) * asAmps;
  const perOhm = 1 / (path_Ohm + resistanceAt_Ohm(bank, q * bank.perFull));
  for (let i = 0; i < sources.length; i += 3) {
    const source_V = sources[i]!;
    const weight = sources[i + 1]!;
    const held_W = sources[i + 2]!;
    let fed_A = rated_A;
    if (converter === null) {
      fed_A = (source_V - idle_V) * perOhm;
      if (fed_A > spare_A) fed_A = spare_A;
      if (fed_A < 0) fed_A = 0;
    } else if (held_W < rated_A * idle_V) fed_A = held_W / idle_V;
    guess_A -= driving * weight * fed_A;
  }
  const half = bank.halves[0]!;
  const moved_A = guess_A < 0 ? -roughlyStored_A(bank, q, -guess_A) : guess_A;
  const charge = (q - moved_A * half.step_h) * bank.perFull;
  const rested_V = volts.at(availableAfter_Ah(half, q1, q, moved_A));
  const ohm = resistanceAt_Ohm(bank, charge);
  const perBankOhm = 1 / ohm;
  const efficiency = bank.efficiency.at(charge);
  const accepts_A = acceptanceAtLoss_A(bank, q, charge, efficiency);
  const missing_Ah = bank.full_Ah - q;
  const perStored_Ah = tank.perAmp_h * efficiency;

  let net_A = 0;
  for (let i = parked > 0 ? -3 : 0; i < sources.length; i += 3) {
    const camps = i < 0;
    const source_V = camps || converter !== null ? 0 : sources[i]!;
    const light = camps ? shaded : open;
    const element_S = camps ? camped_S : driven_S;
    let net_W = camps ? camped_W : driven_W;
    let converter_A = camps ? 0 : rated_A;
    let given_A = light * asAmps + converter_A;
    let behind_V = rested_V + gap_V;
    let room_V = source_V - gap_V;
    let perInto_Ah = perStored_Ah;
    let volts_V = 0;
    let into_A = 0;
    let through_A = 0;
    const leads = source_V > idle_V;
    if (leads) {
      for (let way = 0; ;) {
        const perVolt = missing_Ah * weak.slope;
        const perThrough = perVolt * path_Ohm;
        const a = efficiency + perThrough * (1 + ohm * element_S);
        const b =
          (efficiency + perThrough) * behind_V +
          ohm * (missing_Ah * weak.at0 + perVolt * source_V + perThrough * given_A);
        const square = b * b - 4 * a * (ohm * perThrough * net_W);
        volts_V = (0.5 / a) * (square > 0 ? b + Math.sqrt(square) : b);
        into_A = (volts_V - behind_V) * perBankOhm;
        through_A = into_A + net_W / volts_V + element_S * volts_V - given_A;
        const given_V = source_V - through_A * path_Ohm;
        if (given_V >= weak.to && way >= 0) {
          weak.higher();
          way = 1;
        } else if (given_V < weak.from && way <= 0) {
          weak.lower();
          way = -1;
        } else break;
      }
      if (into_A > accepts_A) {
        into_A = accepts_A;
        volts_V = behind_V + ohm * into_A;
        through_A = into_A + net_W / volts_V + element_S * volts_V - given_A;
      }
      if (through_A > spare_A) return false;
    }
    let carries = false;
    for (let limited = leads; ; limited = carries) {
      const end_V = limited ? volts.at(atRest_Ah + into_A * perInto_Ah) : 0;
      if (limited && end_V + into_A * ohm + through_A * path_Ohm > room_V) {
        for (;;) {
          const perInto = ohm + volts.slope * perInto_Ah;
          const a = perInto + path_Ohm * (1 + ohm * element_S);
          const most_V = room_V - volts.at0 - volts.slope * atRest_Ah;
          const b = (perInto + path_Ohm) * behind_V + ohm * (most_V + path_Ohm * given_A);
          const square = b * b - 4 * a * (ohm * path_Ohm * net_W);
          volts_V = (0.5 / a) * (square > 0 ? b + Math.sqrt(square) : b);
          into_A = (volts_V - behind_V) * perBankOhm;
          if (!(atRest_Ah + into_A * perInto_Ah < volts.from)) break;
          volts.lower();
        }
        through_A = into_A + net_W / volts_V + element_S * volts_V - given_A;
      }
      if (volts_V > absorption_V) return false;
      if (carries || (into_A > 0 && through_A > 0)) break;
      const charges = net_W + element_S * rested_V * rested_V < given_A * rested_V;
      behind_V = charges ? rested_V + gap_V : rested_V;
      const rise_V = ohm * given_A;
      const driven_V = behind_V + rise_V;
      const leak = ohm * element_S;
      const square = driven_V * driven_V - 4 * (1 + leak) * (ohm * net_W);
      if (!(square > 0)) return false;
      into_A = (Math.sqrt(square) + rise_V - behind_V * (1 + 2 * leak)) * ((0.5 * perBankOhm) / (1 + leak));
      volts_V = behind_V + into_A * ohm;
      if (charges && volts_V > absorption_V) {
        volts_V = absorption_V;
        into_A = given_A - net_W / volts_V - element_S * volts_V;
      }
      if (converter_A > 0 && sources[i + 2]! < converter_A * volts_V) {
        // Its path holds it, so that it is a power and not a current.
        net_W -= sources[i + 2]!;
        given_A -= converter_A;
        converter_A = into_A = through_A = volts_V = 0;
        continue;
      }
      if (charges) {
        into_A = into_A < 0 ? 0 : into_A < accepts_A ? into_A : accepts_A;
        break;
      }
      if (source_V === 0 || volts.at(atRest_Ah + into_A * tank.perAmp_h) + into_A * ohm >= source_V) break;
      // The bank gives nothing, unless the relay cannot give all.
      carries = true;
      volts_V = rested_V;
      into_A = 0;
      through_A = net_W / rested_V + element_S * rested_V - given_A;
      room_V = source_V;
      perInto_Ah = tank.perAmp_h;
      if (through_A > spare_A) return false;
    }
    if (light * asWatts > sunMost_A * Math.min(volts_V, rested_V)) return false;
    const weight = camps ? parked : driving * sources[i + 1]!;
    net_A -= weight * (into_A > 0 ? into_A * efficiency : into_A);
  }
  state.net_A = net_A;
  return true;
}
