import { bankModel, type BankModel } from "../bank/index.ts";
import type { Setup } from "../study.ts";
import type { Caution } from "./types.ts";
import { wiringCautions } from "./wiringCautions.ts";
import { chargeRun, type NextStage } from "./wiringCharge.ts";
import { checklist } from "./wiringChecklist.ts";
import { sizingAmps_A, sourceNominal_V } from "./wiringConductor.ts";
import { fridgeRuns, otherRuns } from "./wiringOther.ts";
import { safety, standards } from "./wiringSafety.ts";
import type { WiringAnswer } from "./wiringTypes.ts";

/** A charge run is looked at over minutes, so that the bank's acceptance is what it takes then and not an hour's mean. */
const moment_h = 0.1;

/**
 * The wiring of each setup: charge run, other runs, what to fuse, what to mind, and what to pull while the loom is open.
 * The stage after is the setup, of those listed later, that asks most of the run.
 *
 * @param bankTemp_C how warm each setup's bank stands [°C], -40 to 60
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
  const { charge, others, fridges, cautions } = solved(setup, model, next);
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

function solved(setup: Setup, model: BankModel, next: NextStage | null) {
  const charge = setup.feed ? chargeRun(setup.feed, model, next) : null;
  const others = otherRuns(setup, model);
  const fridges = fridgeRuns(setup, model);
  return { charge, others, fridges, cautions: wiringCautions(setup, charge, others, fridges) };
}

/**
 * What is wrong with one setup's feed and runs, for `explain`: a fridge that trips on its own feed first of all.
 * @param bankTemp_C of the bank [°C], -40 to 60
 */
export function feedCautions(setup: Setup, bankTemp_C: number): Caution[] {
  return solved(setup, bankModel(setup.bank, bankTemp_C, moment_h), null).cautions;
}
