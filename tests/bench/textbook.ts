/**
 * The bare loop that the bank's recurrence is timed against: two tanks, a current an hour, and nothing else.
 * Source: Manwell & McGowan 1993, Solar Energy 50(5), 399–405.
 */
export interface TwoTanks {
  readonly c: number;
  readonly k_per_h: number;
  readonly full_Ah: number;
}

/** As published: both equations, their exponential in each step. @returns charge held at the end [Ah] */
export function textbookLoop({ c, k_per_h: k, full_Ah }: TwoTanks, net_A: Float64Array): number {
  const dt = 1;
  let q1 = c * full_Ah;
  let q2 = (1 - c) * full_Ah;
  for (let i = 0; i < net_A.length; i++) {
    const I = net_A[i]!;
    const q = q1 + q2;
    const next1 =
      q1 * Math.exp(-k * dt) +
      ((q * k * c - I) * (1 - Math.exp(-k * dt))) / k -
      (I * c * (k * dt - 1 + Math.exp(-k * dt))) / k;
    const next2 =
      q2 * Math.exp(-k * dt) +
      q * (1 - c) * (1 - Math.exp(-k * dt)) -
      (I * (1 - c) * (k * dt - 1 + Math.exp(-k * dt))) / k;
    q1 = next1;
    q2 = next2;
  }
  return q1 + q2;
}

/** The same with all that does not change taken out of the loop. */
export function hoistedLoop({ c, k_per_h: k, full_Ah }: TwoTanks, net_A: Float64Array): number {
  const e = Math.exp(-k);
  const gain = c * (1 - e);
  const perAmp = (1 - e + c * (k - 1 + e)) / k;
  let q1 = c * full_Ah;
  let q = full_Ah;
  for (let i = 0; i < net_A.length; i++) {
    const I = net_A[i]!;
    q1 = q1 * e + q * gain - I * perAmp;
    q -= I;
  }
  return q1 + (q - q1);
}
