import { hundredth } from "../numeric/hundredth.ts";
import { ampacity_A, hotConnector, hotConnector_A, onTheWayThrough_A, pieceLimit_A, pieceName } from "../feed/index.ts";
import type { Feed, Setup } from "../study.ts";
import type { Caution } from "./types.ts";
import { besideEngine } from "./wiringConductor.ts";
import type { ChargeMoment, ChargeRunAnswer, FridgeRunAnswer, RunAnswer } from "./wiringTypes.ts";
import { amps, listed } from "./words.ts";

/** What is wrong with a setup's wiring, the gravest first: for `explain` as for `wiring`. */
export function wiringCautions(
  setup: Setup,
  charge: ChargeRunAnswer | null,
  others: readonly RunAnswer[],
  fridges: readonly FridgeRunAnswer[],
): Caution[] {
  return [
    ...fridges.filter(({ feedIsTheCause }) => feedIsTheCause).map(fridgeDrop),
    ...(charge && setup.feed ? chargeCautions(setup, setup.feed, charge) : []),
    ...[...others, ...fridges].flatMap(runOver),
  ];
}

const fridgeDrop = ({ sentences, load }: FridgeRunAnswer): Caution => ({
  code: "fridge-feed-drop",
  text: `${sentences.at(-1)!} Look at the feed of "${load}" before the battery is blamed.`,
});

function chargeCautions(setup: Setup, feed: Feed, charge: ChargeRunAnswer): Caution[] {
  const starts = charge.moments.filter(({ when }) => when === "start");
  return [
    ...starts.flatMap((moment) => lowSource(feed, moment)),
    ...starts.filter(cableTells).map((moment) => cableHolds(feed, moment)),
    ...chargeOver(feed, charge),
    ...fuseFaults(feed),
    ...hotPlug(feed, charge),
    ...lithiumRelay(setup, feed),
    ...alternatorShort(feed, charge),
    ...byDiameter(charge),
  ];
}

const pct = (share: number): string => `${Math.round(share * 100)} %`;

function lowSource(feed: Feed, { source_V, weight, delivered_A, limitedBy }: ChargeMoment): Caution[] {
  if (limitedBy !== "source") return [];
  const when = weight < 1 ? `for ${pct(weight)} of a drive` : "throughout a drive";
  const reach = `${amps(delivered_A)} reach the bank at half charge`;
  if (feed.kind === "converter") {
    if (!(source_V < feed.minInput_V)) return [];
    const text = `The source stands at ${source_V} V ${when}, under the ${feed.minInput_V} V that the DC-DC charger starts at: it gives nothing then.`;
    return [{ code: "feed-under-minimum", text }];
  }
  if (source_V >= feed.source.volts) return [];
  const text = `A relay on a variable-voltage alternator: it stands at ${source_V} V ${when}, and ${reach}. A relay cannot raise volts; a DC-DC charger can.`;
  return [{ code: "feed-relay-low-volts", text }];
}

/** A caution only where the cable costs a tenth of the amps or more (chosen). */
const cableTells = ({ limitedBy, gain_A, delivered_A }: ChargeMoment): boolean =>
  limitedBy === "cable" && gain_A >= 0.1 * (delivered_A + gain_A);

function cableHolds(feed: Feed, { source_V, delivered_A, gain_A, limit }: ChargeMoment): Caution {
  const where = feed.kind === "converter" ? "the converter" : "the bank";
  return {
    code: "feed-thin-cable",
    text: `The cable holds the charge back: from ${source_V} V it leaves ${limit.value.toFixed(1)} V at ${where}, and ${delivered_A.toFixed(0)} A reach the bank where ${(delivered_A + gain_A).toFixed(0)} A could.${feed.kind === "converter" ? " Some chargers fold back so far, others cut out and try again." : ""}`,
  };
}

/** A fuse does not limit a converter, it blows; a plug does not limit anything, it burns. */
function chargeOver({ kind }: Feed, { overruns }: ChargeRunAnswer): Caution[] {
  const mend = kind === "converter" ? "set the charger lower or change it" : "a relay cannot hold back, so change it";
  return overruns.map(({ by, name, rated_A, carried_A }) => {
    const text = `${name}: ${carried_A.toFixed(0)} A want to flow where ${rated_A} A are allowed. ${by === "fuse" ? "It blows at full charge" : "It overheats"}; ${mend}.`;
    return { code: by === "fuse" ? "feed-over-fuse" : "feed-over-plug", text };
  });
}

function fuseFaults({ path }: Feed): Caution[] {
  const fuses = path.filter(({ kind }) => kind === "fuse");
  if (fuses.length === 0)
    return [{ code: "feed-no-fuse", text: "The charge run has no fuse in it: it wants one at each battery." }];
  const least_A = Math.min(...fuses.map((fuse) => pieceLimit_A(fuse) ?? Infinity));
  const weak = path.flatMap((piece) => {
    const carries = piece.kind === "cable" ? ampacity_A(piece.area_mm2, besideEngine) : Infinity;
    if (carries !== null && carries >= least_A) return [];
    const amps = carries === null ? "less than the ampacity table goes down to" : `${carries.toFixed(0)} A`;
    return [{ name: pieceName(piece), amps }];
  });
  return [...new Set(weak.map(({ amps }) => amps))].map((amps) => {
    const names = weak.filter((piece) => piece.amps === amps).map(({ name }) => name);
    const [carry, them] = names.length === 1 ? ["carries", "it"] : ["carry", "them"];
    const text = `${listed(names)} ${carry} ${amps} beside the engine, and the fuse before ${them} is ${least_A} A: the cable would burn before the fuse opens.`;
    return { code: "feed-fuse-over-cable", text };
  });
}

/** A 50 A connector in the heat carries less on a thin wire. */
function hotPlug({ path }: Feed, { running_A, thinnest_mm2 }: ChargeRunAnswer): Caution[] {
  const at = path.findIndex((piece) => piece.kind === "plug" && piece.limit_A === hotConnector.nominal_A);
  if (at < 0 || thinnest_mm2 === null) return [];
  const carries = hotConnector_A(thinnest_mm2);
  const carried_A = running_A + onTheWayThrough_A(path)[at]!;
  if (carried_A <= carries || carried_A > hotConnector.nominal_A) return [];
  const text = `${pieceName(path[at]!)}: in ${hotConnector.ambient_C} °C with ${hundredth(thinnest_mm2)} mm² crimped in, a connector of this class carries about ${carries.toFixed(0)} A for good, and ${carried_A.toFixed(0)} A run.`;
  return [{ code: "feed-plug-hot", text }];
}

function lithiumRelay({ bank }: Setup, feed: Feed): Caution[] {
  if (bank.chemistry !== "lfp" || feed.kind !== "relay") return [];
  const text =
    "A lithium bank straight on an alternator takes all it can give for hours, and may drop off in one step: alternators overheat and electronics see the spike (common practice). A DC-DC charger holds both.";
  return [{ code: "feed-relay-lithium", text }];
}

function alternatorShort({ source }: Feed, { alternator }: ChargeRunAnswer): Caution[] {
  if (!alternator.given || alternator.road.spare_A >= source.spare_A) return [];
  const text = `The job counts on ${hundredth(source.spare_A)} A to spare; by the hot curve a ${alternator.rated_A} A alternator leaves about ${alternator.road.spare_A.toFixed(0)} A on the road.`;
  return [{ code: "feed-alternator-short", text }];
}

function byDiameter({ ifSoldByDiameter }: ChargeRunAnswer): Caution[] {
  if (ifSoldByDiameter === null) return [];
  const { name, area_mm2, delivered_A, asNamed_A } = ifSoldByDiameter;
  const text = `If the cable was sold as "${name}", it holds about ${area_mm2} mm² of copper, not ${Number.parseFloat(name)} mm²: ${delivered_A.toFixed(0)} A at the start instead of ${asNamed_A.toFixed(0)} A. Measure the strands.`;
  return [{ code: "feed-sold-by-diameter", text }];
}

const runOver = (run: RunAnswer): Caution[] =>
  run.overruns.map(({ name, rated_A, carried_A }) => ({
    code: "run-over-rating",
    text: `${run.name}: ${name} is rated ${rated_A} A and ${carried_A.toFixed(0)} A run through it.`,
  }));
