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
  /** charge available at the end of the step where no current flows [Ah], and the volts of that */
  atRest_Ah: number;
  restedEnd_V: number;
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
  /** what a plain charger's rating keeps back [A] */
  sunOver_A: number;
  /** of a converter that its path or its source holds below its rating [W] */
  held_W: number;
  /** feed and mains together, but for `held_W` [A] */
  extra_A: number;

  /** results of `meet`: terminal volts, amps into the bank (negative discharges) */
  volts_V: number;
  bank_A: number;
  /** results of `account`: watts that each side gave or took */
  sunAvailable_W: number;
  sunUsed_W: number;
  extraUsed_W: number;
  served_W: number;
}

/** A bus at rest, to be filled in and used again every step. */
export const newBus = (): Bus => ({
  q1_Ah: 0.5,
  q_Ah: 0.5,
  atRest_Ah: 0.5,
  restedEnd_V: 0.5,
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
  sunOver_A: 0.5,
  held_W: 0.5,
  extra_A: 0.5,
  volts_V: 0.5,
  bank_A: 0.5,
  sunAvailable_W: 0.5,
  sunUsed_W: 0.5,
  extraUsed_W: 0.5,
  served_W: 0.5,
});

/** Meets and accounts. */
export function settle(bus: Bus): void {
  meet(bus);
  account(bus);
}

/** Volts and amps into the bank, with feed and mains as they stand. */
export function meet(bus: Bus): void {
  const { rested_V, gap_V, absorption_V, accepts_A } = bus;
  if (surplus_W(bus, rested_V) <= 0) {
    bus.volts_V = loadedVolts(bus, rested_V);
    bus.bank_A = surplus_A(bus, bus.volts_V);
    return;
  }
  const charging_V = rested_V + gap_V;
  if (surplus_W(bus, charging_V) <= 0) {
    bus.bank_A = 0;
    bus.volts_V = balanceVolts(bus, 0, charging_V);
    return;
  }
  const volts_V = loadedVolts(bus, charging_V);
  bus.volts_V = volts_V < absorption_V ? volts_V : absorption_V;
  bus.bank_A = surplus_A(bus, bus.volts_V);
  if (bus.bank_A > accepts_A) {
    bus.bank_A = accepts_A;
    bus.volts_V = balanceVolts(bus, accepts_A, absorption_V);
  }
}

/** Watts of each side. Energy closes: sun + extra = loads + bank, to rounding. */
export function account(bus: Bus): void {
  const { load_W, element_S, sun_W, sun_A, sunMost_A, held_W, extra_A, volts_V, bank_A } = bus;
  const served_W = load_W + element_S * volts_V * volts_V;
  const tracked_W = sunMost_A * volts_V < sun_W ? sunMost_A * volts_V : sun_W;
  const available_W = tracked_W + sun_A * volts_V;
  const needed_W = served_W + bank_A * volts_V;
  bus.served_W = served_W;
  bus.sunAvailable_W = available_W;
  bus.sunUsed_W = available_W < needed_W ? available_W : needed_W > 0 ? needed_W : 0;
  bus.extraUsed_W = extra_A > 0 || held_W > 0 ? needed_W - bus.sunUsed_W : 0;
}

/** Watts left for the bank at a bus voltage. */
function surplus_W({ load_W, element_S, sun_W, sun_A, sunMost_A, held_W, extra_A }: Bus, volts_V: number): number {
  const most_W = sunMost_A * volts_V;
  const tracked_W = most_W < sun_W ? most_W : sun_W;
  return tracked_W + held_W - load_W + (sun_A + extra_A - element_S * volts_V) * volts_V;
}

/** Amps left for the bank at a bus voltage. */
export const surplus_A = (bus: Bus, volts_V: number): number => surplus_W(bus, volts_V) / volts_V;

/**
 * A limit that is a line: perInto × amps into the bank + perExtra × extra amps may be `most`, the bank standing `behind_V`
 * behind its resistance.
 */
export interface Limit {
  behind_V: number;
  perInto: number;
  perExtra: number;
  most: number;
}

/**
 * Puts the bus where it stands on a limit, and works out the extra amps that it takes: those, volts and the bank's amps are
 * filled in. The upper root of a V² − b V + c = 0; at most power where there is none.
 */
export function standOn(bus: Bus, { behind_V, perInto, perExtra, most }: Limit): void {
  const { resistance_Ohm, element_S, sun_W, sunMost_A } = bus;
  const perOhm = 1 / resistance_Ohm;
  const ohms = resistance_Ohm * perExtra;
  const a = perInto + perExtra + ohms * element_S;
  const half = 0.5 / a;
  let net_W = bus.load_W - bus.held_W - sun_W;
  let amps = bus.sun_A;
  let b = (perInto + perExtra) * behind_V + resistance_Ohm * most + ohms * amps;
  let volts_V = upperRoot(a, half, b, ohms * net_W);
  if (sun_W > sunMost_A * volts_V) {
    net_W += sun_W;
    amps += sunMost_A;
    b += ohms * sunMost_A;
    volts_V = upperRoot(a, half, b, ohms * net_W);
  }
  if (volts_V > bus.absorption_V) {
    bus.volts_V = bus.absorption_V;
    bus.extra_A = 0;
    const needed_A = -surplus_A(bus, bus.absorption_V);
    bus.bank_A = (most - perExtra * needed_A) / (perInto + perExtra);
    bus.extra_A = bus.bank_A + needed_A;
  } else {
    bus.volts_V = volts_V;
    bus.bank_A = (volts_V - behind_V) * perOhm;
    bus.extra_A = bus.bank_A - amps + net_W / volts_V + element_S * volts_V;
  }
}

/** Volts behind the bank's resistance, the extra amps being given. */
function loadedVolts(bus: Bus, behind_V: number): number {
  const { resistance_Ohm, sun_W, sunMost_A } = bus;
  const load_W = bus.load_W - bus.held_W;
  const a = 1 + resistance_Ohm * bus.element_S;
  const half = 0.5 / a;
  const b = behind_V + resistance_Ohm * (bus.extra_A + bus.sun_A);
  const tracked_V = upperRoot(a, half, b, resistance_Ohm * (load_W - sun_W));
  if (sun_W <= sunMost_A * tracked_V) return tracked_V;
  return upperRoot(a, half, b + resistance_Ohm * sunMost_A, resistance_Ohm * load_W);
}

/** The upper root of a V² − b V + c = 0; b / 2a, where most power is, where there is none. @param half 1 / 2a */
function upperRoot(a: number, half: number, b: number, c: number): number {
  const square = b * b - 4 * a * c;
  return (square > 0 ? b + Math.sqrt(square) : b) * half;
}

/** The volts, at most `high_V`, at which the sources just meet loads and a given current into the bank. */
function balanceVolts(bus: Bus, bank_A: number, high_V: number): number {
  if (surplus_A(bus, high_V) >= bank_A) return high_V;
  let net_A = bus.sun_A + bus.extra_A - bank_A;
  const load_W = bus.load_W - bus.held_W;
  let volts_V = meeting(net_A, bus.sun_W - load_W, bus.element_S);
  if (bus.sun_W > bus.sunMost_A * volts_V) {
    net_A += bus.sunMost_A;
    volts_V = meeting(net_A, -load_W, bus.element_S);
  }
  return volts_V;
}

/** V that solves I V + P − G V² = 0. */
function meeting(net_A: number, net_W: number, element_S: number): number {
  if (element_S === 0) return -net_W / net_A;
  return (net_A + Math.sqrt(net_A * net_A + 4 * element_S * net_W)) / (2 * element_S);
}
