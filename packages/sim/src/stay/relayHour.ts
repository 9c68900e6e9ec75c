import { acceptance_A, roughlyStored_A } from "../bank/acceptance.ts";
import { hourOf, resistanceAt_Ohm } from "../bank/bankModel.ts";
import { availableAfter_Ah } from "../bank/twoTanks.ts";
import { upperRoot } from "./bus.ts";
import type { Drive, MixedHours } from "./drive.ts";
import type { RunState } from "./runState.ts";

/**
 * Puts the net amps of a step in which all or a part is driven with a relay into `state`. They are those that `settleStep`
 * comes to, and what a relay passes is told in `meetRelay`; but here all is in one function and in locals, as `plainSteps`
 * has the plain hours: numbers that go to and fro between functions and objects cost more than reckoning them does. Left to
 * `settleStep` are steps in which the charger clips the sun, the relay gives all that the source spares, brings the bank to
 * its absorption volts, and those in which the bank cannot give what is asked.
 * @returns whether it is done
 */
export function relayHour(drive: Drive, mixed: MixedHours, state: RunState): boolean {
  const { bank, sunTracks } = drive;
  const { feed } = mixed;
  const h = hourOf(bank, state.steps);
  const parked = mixed.parked[h]!;
  const driving = mixed.driving[h]!;
  if (feed === null || feed.converter !== null || !(driving > 0) || mixed.mains[h]! > 0) return false;
  const { volts, tank, gap_V, absorption_V, weakTakenUp_per_h: weak } = bank;
  const { shares, spare_A, resistance_Ohm: path_Ohm } = feed;
  const { q1, q } = state;
  const { nominal_V } = bank.bank;
  const on = state.on ? 1 : 0;
  const asWatts = sunTracks ? 1 : 0;
  const asAmps = 1 - asWatts;
  const sunMost_A = sunTracks ? drive.sunMost_A : Infinity;
  const open = drive.sun[h]!;
  const shaded = open * drive.kept[h]!;
  const camped_W = on * drive.loads.load_W[h]! - shaded * asWatts;
  const driven_W = on * mixed.drivingLoads.load_W[h]! - open * asWatts;
  const perSquare = on / (nominal_V * nominal_V);
  const camped_S = perSquare * drive.loads.element_W[h]!;
  const driven_S = perSquare * mixed.drivingLoads.element_W[h]!;

  const atRest_Ah = availableAfter_Ah(tank, q1, q, 0);
  const idle_V = volts.at(atRest_Ah) + gap_V;
  const perOhm = 1 / (path_Ohm + resistanceAt_Ohm(bank, q * bank.perFull));
  let guess_A = (parked * camped_W + driving * driven_W) * bank.perGuessed_V;
  guess_A += (parked * camped_S + driving * driven_S) * nominal_V;
  guess_A -= (parked * shaded + driving * open) * asAmps;
  for (let i = 0; i < shares.length; i++) {
    const { source_V, weight } = shares[i]!;
    if (source_V > idle_V) guess_A -= driving * weight * Math.min(spare_A, (source_V - idle_V) * perOhm);
  }
  const half = bank.halves[0]!;
  const moved_A = guess_A < 0 ? -roughlyStored_A(bank, q, -guess_A) : guess_A;
  const charge = (q - moved_A * half.step_h) * bank.perFull;
  const rested_V = volts.at(availableAfter_Ah(half, q1, q, moved_A));
  const ohm = resistanceAt_Ohm(bank, charge);
  const efficiency = bank.efficiency.at(charge);
  const accepts_A = acceptance_A(bank, q, charge);
  const missing_Ah = bank.full_Ah - q;
  const perStored_Ah = tank.perAmp_h * efficiency;

  let net_A = 0;
  for (let i = parked > 0 ? -1 : 0; i < shares.length; i++) {
    const camps = i < 0;
    const source_V = camps ? 0 : shares[i]!.source_V;
    const light = camps ? shaded : open;
    const net_W = camps ? camped_W : driven_W;
    const element_S = camps ? camped_S : driven_S;
    const sun_A = light * asAmps;
    let behind_V = rested_V + gap_V;
    let room_V = source_V - gap_V;
    let perInto_Ah = perStored_Ah;
    let volts_V = 0;
    let into_A = 0;
    let through_A = 0;
    if (source_V > idle_V) {
      for (let way = 0; ;) {
        const perVolt = missing_Ah * weak.slope;
        const perThrough = perVolt * path_Ohm;
        const a = efficiency + perThrough * (1 + ohm * element_S);
        const b =
          (efficiency + perThrough) * behind_V +
          ohm * (missing_Ah * weak.at0 + perVolt * source_V + perThrough * sun_A);
        volts_V = upperRoot(a, 0.5 / a, b, ohm * perThrough * net_W);
        into_A = (volts_V - behind_V) / ohm;
        through_A = into_A + net_W / volts_V + element_S * volts_V - sun_A;
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
        through_A = into_A + net_W / volts_V + element_S * volts_V - sun_A;
      }
      if (through_A > spare_A) return false;
    }
    let carries = false;
    for (let limited = source_V > idle_V; ; limited = carries) {
      const end_V = limited ? volts.at(atRest_Ah + into_A * perInto_Ah) : 0;
      if (end_V + into_A * ohm + through_A * path_Ohm > room_V && limited) {
        for (;;) {
          const perInto = ohm + volts.slope * perInto_Ah;
          const a = perInto + path_Ohm * (1 + ohm * element_S);
          const most_V = room_V - volts.at0 - volts.slope * atRest_Ah;
          const b = (perInto + path_Ohm) * behind_V + ohm * (most_V + path_Ohm * sun_A);
          volts_V = upperRoot(a, 0.5 / a, b, ohm * path_Ohm * net_W);
          into_A = (volts_V - behind_V) / ohm;
          if (!(atRest_Ah + into_A * perInto_Ah < volts.from)) break;
          volts.lower();
        }
        through_A = into_A + net_W / volts_V + element_S * volts_V - sun_A;
      }
      if (volts_V > absorption_V) return false;
      if (carries || (into_A > 0 && through_A > 0)) break;
      const charges = net_W + element_S * rested_V * rested_V < sun_A * rested_V;
      if (!charges) behind_V = rested_V;
      const a = 1 + ohm * element_S;
      const driven_V = behind_V + ohm * sun_A;
      volts_V = upperRoot(a, 0.5 / a, driven_V, ohm * net_W);
      into_A = (volts_V - behind_V) / ohm;
      if (!(volts_V * 2 * a > driven_V)) return false;
      if (charges) {
        if (volts_V > absorption_V) {
          volts_V = absorption_V;
          into_A = sun_A - net_W / volts_V - element_S * volts_V;
        }
        into_A = into_A < 0 ? 0 : into_A < accepts_A ? into_A : accepts_A;
        break;
      }
      if (volts.at(atRest_Ah + into_A * tank.perAmp_h) + into_A * ohm >= source_V) break;
      // The bank gives nothing, unless the relay cannot give all.
      carries = true;
      volts_V = rested_V;
      into_A = 0;
      through_A = net_W / rested_V + element_S * rested_V - sun_A;
      room_V = source_V;
      perInto_Ah = tank.perAmp_h;
      if (through_A > spare_A) return false;
    }
    if (light * asWatts > sunMost_A * Math.min(volts_V, rested_V)) return false;
    const weight = camps ? parked : driving * shares[i]!.weight;
    net_A -= weight * (into_A > 0 ? into_A * efficiency : into_A);
  }
  state.net_A = net_A;
  return true;
}
