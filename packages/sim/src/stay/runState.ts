/** A run under way. Numbers are kept here in place: one that crosses a call or a return would be boxed, step after step. */
export interface RunState {
  /** steps done */
  steps: number;
  /** loads are powered */
  on: boolean;
  /** charge available, and all that is held [Ah] */
  q1: number;
  q: number;
  /** net amps out of the bank in the step under way */
  net_A: number;
  lowest_Ah: number;
  /** steps done when it stood there */
  lowestStep: number;
  /** hours from arrival; NaN where it has not happened */
  drop_h: number;
  reserve_h: number;
  return_h: number;
}

export const newRunState = (): RunState => ({
  steps: 0,
  on: true,
  q1: 0.5,
  q: 0.5,
  net_A: 0.5,
  lowest_Ah: 0.5,
  lowestStep: 0,
  drop_h: NaN,
  reserve_h: NaN,
  return_h: NaN,
});
