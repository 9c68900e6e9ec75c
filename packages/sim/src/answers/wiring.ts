import { bankModel } from "../bank/index.ts";
import type { Setup } from "../study.ts";
import { moment_h, solvedWiring } from "./solvedWiring.ts";
import type { NextStage } from "./wiringCharge.ts";
import { checklist } from "./wiringChecklist.ts";
import { sizingAmps_A, sourceNominal_V } from "./wiringConductor.ts";
import { safety, standards } from "./wiringSafety.ts";
import type { WiringAnswer } from "./wiringTypes.ts";

/**
 * The wiring of each setup: charge run, other runs, what to fuse, what to mind, and what to pull while the loom is open.
 * The stage after is the setup, of those listed later, that asks most of the run.
 *
 * @param bankTemp_C how warm each setup's bank stands [°C], -80 to 80
 * @throws RangeError naming the field, what was given and what is accepted
 */
export function wiring(setups: readonly Setup[], bankTemp_C: (setup: Setup) => number): WiringAnswer[] {
  const stages = setups.map((setup) => ({ setup, model: bankModel(setup.bank, bankTemp_C(setup), moment_h) }));
  return stages.map((stage, i) => wiringOf(stage, nextStage(stage, stages.slice(i + 1))));
}

/** The setup, of the later ones, whose feed asks more amps than this one's, and most of all; null where none does. */
function nextStage(stage: NextStage, later: readonly NextStage[]): NextStage | null {
  if (stage.setup.feed === null) return null;
  const dearer = later.filter((other) => asks_A(other) > asks_A(stage));
  return dearer.reduce<NextStage | null>((most, one) => (most && asks_A(most) >= asks_A(one) ? most : one), null);
}

const asks_A = ({ setup, model }: NextStage): number =>
  setup.feed ? sizingAmps_A(setup.feed, model, 0.03 * sourceNominal_V(setup.feed)) : 0;

function wiringOf({ setup, model }: NextStage, next: NextStage | null): WiringAnswer {
  const { charge, others, fridges, cautions } = solvedWiring(setup, model, next);
  return {
    id: setup.id,
    name: setup.name,
    charge,
    others,
    fridges,
    cautions,
    checklist: checklist(setup, next !== null),
    safety: safety(setup),
    standards,
    sentences: [
      ...(charge?.sentences ?? ["Nothing charges the bank on the road."]),
      ...others.flatMap(({ sentences }) => sentences),
      ...fridges.flatMap(({ sentences }) => sentences),
    ],
  };
}
