/**
 * What the bus settles to: bank, loads and sources meeting at one voltage, in closed form.
 *
 * The bank is rested volts behind a resistance; loads are powers and, for a plain heating element, a conductance; the sun
 * is a power (behind a tracking charger) or a current (through a plain one); feed and mains are currents. Loads are served
 * first, then the bank, up to what it accepts; where acceptance and not the source limits, the terminals stand at the
 * absorption volts. What the bank cannot take is left unused, feed and mains giving way before sun.
 */
export interface Bus {
  /** charge available at the start of the step, and all that is held [Ah] */
  q1_Ah: number;
  q_Ah: number;
  /** the bank as it stands half-way through the step: share of full, and what comes of that */
  charge: number;
  efficiency: number;
  /** [V] */
  rested_V: number;
  resistance_Ohm: number;
  gap_V: number;
  absorption_V: number;
  /** most amps into the bank */
  accepts_A: number;
  load_W: number;
  /** of a plain heating element [S]; 0 where there is none */
  element_S: number;
  /** sun behind a tracking charger, before its rating [W] */
  sun_W: number;
  /** sun through a plain charger, its rating applied [A] */
  sun_A: number;
  /** rating of the tracking charger [A] */
  sunMost_A: number;
  /** feed and mains together [A] */
  extra_A: number;

  /** results: terminal volts, amps into the bank (negative discharges), watts that each side gave or took */
  volts_V: number;
  bank_A: number;
  sunAvailable_W: number;
  sunUsed_W: number;
  extraUsed_W: number;
  served_W: number;
}

/** A bus at rest, to be filled in and used again every step. */
export const newBus = (): Bus => ({
  q1_Ah: 0.5,
  q_Ah: 0.5,
  charge: 0.5,
  efficiency: 0.5,
  rested_V: 0.5,
  resistance_Ohm: 0.5,
  gap_V: 0.5,
  absorption_V: 0.5,
  accepts_A: 0.5,
  load_W: 0.5,
  element_S: 0.5,
  sun_W: 0.5,
  sun_A: 0.5,
  sunMost_A: 0.5,
  extra_A: 0.5,
  volts_V: 0.5,
  bank_A: 0.5,
  sunAvailable_W: 0.5,
  sunUsed_W: 0.5,
  extraUsed_W: 0.5,
  served_W: 0.5,
});

/** Fills in the results. Energy closes: sun + extra = loads + bank, to rounding. */
export function settle(bus: Bus): void {
  const { rested_V, gap_V, absorption_V, load_W, element_S, sun_W, sun_A, sunMost_A, extra_A } = bus;
  const amps = sun_A + extra_A;
  let volts_V: number;
  let bank_A: number;
  if (surplus_A(bus, rested_V) <= 0) {
    volts_V = loadedVolts(bus, rested_V);
    bank_A = surplus_A(bus, volts_V);
  } else if (surplus_A(bus, rested_V + gap_V) <= 0) {
    bank_A = 0;
    volts_V = balanceVolts(bus, 0, rested_V + gap_V);
  } else {
    volts_V = loadedVolts(bus, rested_V + gap_V);
    if (volts_V > absorption_V) volts_V = absorption_V;
    bank_A = surplus_A(bus, volts_V);
    if (bank_A > bus.accepts_A) {
      bank_A = bus.accepts_A;
      volts_V = balanceVolts(bus, bank_A, absorption_V);
    }
  }
  const served_W = load_W + element_S * volts_V * volts_V;
  const tracked_W = sunMost_A * volts_V < sun_W ? sunMost_A * volts_V : sun_W;
  const available_W = tracked_W + sun_A * volts_V;
  const needed_W = served_W + bank_A * volts_V;
  bus.volts_V = volts_V;
  bus.bank_A = bank_A;
  bus.served_W = served_W;
  bus.sunAvailable_W = available_W;
  bus.sunUsed_W = available_W < needed_W ? available_W : needed_W > 0 ? needed_W : 0;
  bus.extraUsed_W = amps > sun_A ? needed_W - bus.sunUsed_W : 0;
}

/** Amps left for the bank at a bus voltage. */
function surplus_A(bus: Bus, volts_V: number): number {
  const tracked_A = bus.sun_W / volts_V;
  const sun_A = bus.sun_A + (tracked_A < bus.sunMost_A ? tracked_A : bus.sunMost_A);
  return sun_A + bus.extra_A - bus.load_W / volts_V - bus.element_S * volts_V;
}

/** Volts behind the bank's resistance: the upper root of a V² − (E + R I) V + R P = 0; at most power where there is none. */
function loadedVolts(bus: Bus, behind_V: number): number {
  const amps = bus.sun_A + bus.extra_A;
  const tracked_V = upperRoot(bus, behind_V + bus.resistance_Ohm * amps, bus.load_W - bus.sun_W);
  if (bus.sun_W <= bus.sunMost_A * tracked_V) return tracked_V;
  return upperRoot(bus, behind_V + bus.resistance_Ohm * (amps + bus.sunMost_A), bus.load_W);
}

function upperRoot(bus: Bus, b: number, net_W: number): number {
  const a = 1 + bus.resistance_Ohm * bus.element_S;
  const square = b * b - 4 * a * bus.resistance_Ohm * net_W;
  return square > 0 ? (b + Math.sqrt(square)) / (2 * a) : b / (2 * a);
}

/** The volts, at most `high_V`, at which the sources just meet loads and a given current into the bank. */
function balanceVolts(bus: Bus, bank_A: number, high_V: number): number {
  if (surplus_A(bus, high_V) >= bank_A) return high_V;
  let net_A = bus.sun_A + bus.extra_A - bank_A;
  let net_W = bus.sun_W - bus.load_W;
  let volts_V = meeting(net_A, net_W, bus.element_S);
  if (bus.sun_W > bus.sunMost_A * volts_V) {
    net_A += bus.sunMost_A;
    net_W = -bus.load_W;
    volts_V = meeting(net_A, net_W, bus.element_S);
  }
  return volts_V;
}

/** V that solves I V + P − G V² = 0. */
function meeting(net_A: number, net_W: number, element_S: number): number {
  if (element_S === 0) return -net_W / net_A;
  return (net_A + Math.sqrt(net_A * net_A + 4 * element_S * net_W)) / (2 * element_S);
}
