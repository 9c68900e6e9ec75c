import { hundredth } from "../numeric/hundredth.ts";
import { restedVolts_V, type BankModel } from "../bank/index.ts";
import {
  ampacity_A,
  alternatorCurve,
  alternatorOutput_A,
  alternatorSpare_A,
  converterEfficiency,
  dropTable,
  fuseMargin,
  engineSpeeds_rpm,
  gaugeNameByDrop,
  onTheWayThrough_A,
  regulatorVolts_V,
  relayOverruns,
  soldByDiameter,
  vehicleOwn_A,
} from "../feed/index.ts";
import type { Feed, PathPiece, Setup, Source } from "../study.ts";
import {
  allOf,
  ampacityCredit,
  ampacityRows,
  besideEngine,
  lengthOf_m,
  lowest_V,
  sizeForAmps,
  sizeForDrop,
  sizeName,
  sizeToUse,
  sizingAmps_A,
  sourceNominal_V,
  sold,
  thicker,
  thinnestOf_mm2,
} from "./wiringConductor.ts";
import { fault_A, fuseAdvice, starterBattery } from "./wiringFuse.ts";
import { chargeAt_A, demand_A, momentsOf, sourceVolts } from "./wiringMoments.ts";
import type { AlternatorAnswer, ChargeMoment, ChargeRunAnswer, ConductorSize, FuseAdvice } from "./wiringTypes.ts";
import { amps } from "./words.ts";

/** A setup that may come next, with its bank made ready. */
export interface NextStage {
  readonly setup: Setup;
  readonly model: BankModel;
}

/** The charge run of a setup: volts, amps, what holds them, and what to pull instead. */
export function chargeRun(feed: Feed, model: BankModel, next: NextStage | null): ChargeRunAnswer {
  const nominal_V = sourceNominal_V(feed);
  const moments = momentsOf(feed, model);
  const starts = moments.filter(({ when }) => when === "start");
  const running_A = demand_A(feed, model);
  const thinnest = thinnestOf_mm2(feed.path);
  const sizes = chargeSizes(feed, model, next);
  const use = sizeToUse(sizes);
  const first = moments[0]!;
  const end_V = first.points[feed.path.length]!.volts_V;
  const run = {
    kind: "charge" as const,
    feed: feed.kind,
    name: feed.kind === "relay" ? "Vehicle to bank, through a relay" : "Vehicle to bank, through a DC-DC charger",
    given: true,
    length_m: lengthOf_m(feed.path),
    thinnest_mm2: thinnest,
    running_A,
    basis: basisOf(feed),
    points: first.points,
    drop_V: first.source_V - end_V,
    dropShare: (first.source_V - end_V) / nominal_V,
    sizes,
    use,
    overruns: relayOverruns(feed.path, running_A),
    fuses: chargeFuses(feed, model, running_A, use),
    ampacity: ampacityRows(thinnest),
    ampacityTable: ampacityCredit,
    moments,
    startMean_A: starts.reduce((sum, moment) => sum + moment.weight * moment.delivered_A, 0),
    alternator: alternatorAnswer(feed.source),
    ifSoldByDiameter: ifByDiameter(feed, model),
    byCircularMils: {
      awg: gaugeNameByDrop(sizingAmps_A(feed, model, 0.03 * nominal_V), lengthOf_m(feed.path), 0.03 * nominal_V),
      source: dropTable.source,
      standing: dropTable.standing,
    },
  };
  return { ...run, sentences: chargeSentences(run, feed, model) };
}

const basisOf = (feed: Feed): string =>
  feed.kind === "converter"
    ? "input at full output, at the source's least favourable volts, whatever fuse and plugs allow"
    : "what flows into a bank at 10 % charge at the source's highest volts";

/** Copper for 3 %, 5 %, the converter's minimum, the amps, and for the setup that may come next. */
function chargeSizes(feed: Feed, model: BankModel, next: NextStage | null): ConductorSize[] {
  const nominal_V = sourceNominal_V(feed);
  const forDrop = (purpose: ConductorSize["purpose"], drop_V: number) =>
    sizeForDrop(purpose, feed.path, sizingAmps_A(feed, model, drop_V), drop_V);
  const three = forDrop("3 % drop", 0.03 * nominal_V);
  return [
    three,
    forDrop("5 % drop", 0.05 * nominal_V),
    ...(feed.kind === "converter" ? [forDrop("converter's minimum input", lowest_V(feed) - feed.minInput_V)] : []),
    sizeForAmps(three.amps_A + onTheWay_A(feed), besideEngine),
    ...(next ? [stageAfter(feed, next)] : []),
  ];
}

/** The size that the same way will need when the bank and the feed are the next setup's: cable is dear to pull twice. */
function stageAfter(feed: Feed, { setup, model }: NextStage): ConductorSize {
  const then = setup.feed ?? feed;
  const drop_V = 0.03 * sourceNominal_V(feed);
  const amps_A = sizingAmps_A(then, model, drop_V);
  const { area_mm2 } = thicker(
    sizeForDrop("stage after", feed.path, amps_A, drop_V),
    sizeForAmps(amps_A + onTheWay_A(feed), besideEngine),
  );
  const size = { ...sold("stage after", amps_A, drop_V, area_mm2), forSetup: { id: setup.id, name: setup.name } };
  const sentence = `Pulled once for "${setup.name}" (${amps(amps_A)}): ${sizeName(size)}. The cable is cheap beside pulling it twice.`;
  return { ...size, sentence };
}

/** Amps that loads fed on the way take through the start of a run, besides the charge. */
const onTheWay_A = ({ path }: Feed): number => onTheWayThrough_A(path)[0] ?? 0;

/** A fuse at each end for the cable as it is; where a thicker one lets more through, the fuse that goes with that. */
function chargeFuses(feed: Feed, model: BankModel, running_A: number, use: ConductorSize | null): FuseAdvice[] {
  const { nominal_V } = model.bank;
  const thinnest = thinnestOf_mm2(feed.path);
  const ampacity = thinnest === null ? null : ampacity_A(thinnest, besideEngine);
  const start_A = running_A + onTheWay_A(feed);
  const pulled = feed.kind === "relay" && use !== null && use.amps_A > start_A * fuseMargin ? use : null;
  const asItIs = (end: string) =>
    pulled === null ? { end } : { end, cable: "as it is" as const, at: `${end}, for the cable as it is` };
  const vehicle = {
    ...asItIs("the vehicle's battery"),
    running_A: start_A,
    ampacity_A: ampacity,
    fault_A: fault_A(starterBattery.volts_V, starterBattery.resistance_Ohm),
    nominal_V: sourceNominal_V(feed),
  };
  const output_A = feed.kind === "converter" ? feed.rated_A * feed.count : running_A;
  const house = {
    ...asItIs("the bank"),
    running_A: output_A,
    ampacity_A: feed.kind === "converter" ? null : ampacity,
    fault_A: fault_A(restedVolts_V(model, 1), model.resistance_Ohm),
    nominal_V,
  };
  const now = [fuseAdvice(vehicle), fuseAdvice(house)];
  if (pulled === null || pulled.standard_mm2 === null) return now;
  const thickened = {
    end: "both ends",
    cable: "once pulled" as const,
    at: `both ends, once ${sizeName(pulled)} is pulled`,
    running_A: pulled.amps_A,
    ampacity_A: ampacity_A(pulled.standard_mm2, besideEngine),
    fault_A: Math.max(vehicle.fault_A, house.fault_A),
    nominal_V: Math.max(vehicle.nominal_V, nominal_V),
  };
  return [...now, fuseAdvice(thickened)];
}

/** Output hot at idle and on the road less the vehicle's own; where the alternator is not given, the least that would do. */
export function alternatorAnswer(source: Source): AlternatorAnswer {
  const road_rpm = engineSpeeds_rpm.road * alternatorCurve.pulley;
  const vehicle_A = source.alternator?.vehicle_A ?? vehicleOwn_A;
  const perRated = alternatorOutput_A(100, road_rpm) / 100;
  const least_A = Math.min(600, Math.max(10, Math.ceil((source.spare_A + vehicle_A) / perRated)));
  const rated_A = source.alternator?.rated_A ?? least_A;
  const at = (rpm: number) => ({
    hot_A: alternatorOutput_A(rated_A, rpm * alternatorCurve.pulley),
    spare_A: alternatorSpare_A(rated_A, vehicle_A, rpm),
  });
  const answer = {
    given: Boolean(source.alternator),
    rated_A,
    vehicle_A,
    idle: at(engineSpeeds_rpm.idle),
    road: at(engineSpeeds_rpm.road),
    source: alternatorCurve.source,
    standing: alternatorCurve.standing,
  };
  return { ...answer, sentence: alternatorSentence(answer, source.spare_A) };
}

function alternatorSentence(answer: Omit<AlternatorAnswer, "sentence">, spare_A: number): string {
  const { given, rated_A, vehicle_A, idle, road } = answer;
  const who = given
    ? `The ${rated_A} A alternator, hot,`
    : `${spare_A} A to spare on the road takes an alternator of about ${rated_A} A; hot, it`;
  const idles = idle.spare_A > 0 ? `${idle.spare_A.toFixed(0)} A at idle` : "nothing at idle";
  return `${who} leaves about ${road.spare_A.toFixed(0)} A on the road and ${idles} with ${vehicle_A} A for the vehicle itself.`;
}

/** What would flow if a cable called by a bare number were sold by its diameter; null where no size of the path is such. */
function ifByDiameter(feed: Feed, model: BankModel): ChargeRunAnswer["ifSoldByDiameter"] {
  const thinnest = thinnestOf_mm2(feed.path);
  const row = thinnest === null ? null : soldByDiameter(thinnest);
  if (row === null || thinnest === null) return null;
  const path: readonly PathPiece[] = feed.path.map((piece) =>
    piece.kind === "cable" && piece.area_mm2 === thinnest ? allOf([piece], row.area_mm2)[0]! : piece,
  );
  const mean_A = (of: Feed) =>
    sourceVolts(of.source).reduce(
      (sum, { source_V, weight }) => sum + weight * chargeAt_A(of, model, source_V, 0.5),
      0,
    );
  const name = `${row.diameter_mm} mm auto`;
  return { name, area_mm2: row.area_mm2, delivered_A: mean_A({ ...feed, path }), asNamed_A: mean_A(feed) };
}

const pct = (share: number): string => `${Math.round(share * 100)} %`;

function chargeSentences(run: Omit<ChargeRunAnswer, "sentences">, feed: Feed, model: BankModel): string[] {
  const starts = run.moments.filter(({ when }) => when === "start");
  const nearFull = run.moments.findLast(({ when }) => when === "near full")!;
  const after = run.sizes.find(({ purpose }) => purpose === "stage after");
  return [
    ...starts.map((moment) => startSentence(moment, feed, model)),
    `Near full (${pct(nearFull.charge)}) ${amps(nearFull.delivered_A)} still flow: ${heldBy(nearFull, feed)}.`,
    pullSentence(run),
    ...(after ? [after.sentence] : []),
    ...run.fuses.map(({ sentence }) => sentence),
    run.alternator.sentence,
    ...hopefulEfficiency(feed, model),
    ...warmRegulator(feed),
  ];
}

function pullSentence({ sizes, use, length_m }: Pick<ChargeRunAnswer, "sizes" | "use" | "length_m">): string {
  const five = sizes.find(({ purpose }) => purpose === "5 % drop")!;
  const least = sizes.find(({ purpose }) => purpose === "converter's minimum input");
  const works = least ? `; the least that a converter at full output works on is ${sizeName(least)}` : "";
  return `Conductor to pull over ${hundredth(length_m)} m, on ${amps(use!.amps_A)}: ${sizeName(use!)} for 3 %, ${sizeName(five)} for 5 %${works}.`;
}

/** A maker's best efficiency is not what a warm converter does on thin volts: say what the lower figure would draw. */
function hopefulEfficiency(feed: Feed, model: BankModel): string[] {
  if (feed.kind !== "converter" || feed.efficiency <= converterEfficiency.high) return [];
  const { low, high } = converterEfficiency;
  const drop_V = 0.03 * sourceNominal_V(feed);
  const [said_A, low_A] = [feed.efficiency, low].map((efficiency) =>
    sizingAmps_A({ ...feed, efficiency }, model, drop_V),
  );
  return [
    `An efficiency of ${feed.efficiency} is above the ${low} to ${high} published for such chargers: at ${low} the input would be ${low_A!.toFixed(0)} A, not ${said_A!.toFixed(0)} A.`,
  ];
}

function warmRegulator({ kind, source }: Feed): string[] {
  const warm_V = regulatorVolts_V(60);
  if (kind !== "relay" || source.volts <= warm_V) return [];
  return [
    `A regulator of 14.4 V at 20 °C stands at about ${warm_V.toFixed(1)} V at 60 °C: a relay feed falls off as the engine bay warms.`,
  ];
}

function startSentence(moment: ChargeMoment, feed: Feed, model: BankModel): string {
  const share = moment.weight < 1 ? `, ${pct(moment.weight)} of a drive` : "";
  const reach = `With the source at ${moment.source_V.toFixed(1)} V${share}, ${amps(moment.delivered_A)} reach the bank at ${pct(moment.charge)} charge`;
  const why = nextToNothing(moment, feed, model);
  return `${reach}: ${why ?? heldBy(moment, feed)}.`;
}

/** A relay on a source that hardly stands above the bank: say the two voltages. */
function nextToNothing({ delivered_A, source_V, limitedBy, bank_V }: ChargeMoment, feed: Feed, model: BankModel) {
  if (feed.kind !== "relay" || limitedBy !== "source" || delivered_A > 0.02 * model.bank.capacity_Ah) return null;
  const needs_V = delivered_A > 0 ? model.absorption_V : bank_V + model.gap_V;
  const verb = delivered_A > 0 ? "wants" : "takes nothing under";
  const lead = delivered_A >= 0.05 ? "next to nothing, because " : "";
  return `${lead}the bank ${verb} ${needs_V.toFixed(1)} V and a relay cannot raise ${source_V.toFixed(1)} V`;
}

/** What holds the amps, in words with its number. */
export function heldBy({ limitedBy, limit, gain_A }: ChargeMoment, feed: Feed): string {
  const more = gain_A >= 0.5 ? `, ${gain_A.toFixed(gain_A < 9.95 ? 1 : 0)} A more without that` : "";
  const value = limit.unit === "A" ? amps(limit.value) : `${limit.value.toFixed(1)} ${limit.unit}`;
  switch (limitedBy) {
    case "bank":
      return `the bank takes no more at this charge${more}`;
    case "cable":
      return feed.kind === "converter"
        ? `the cable holds it back, leaving ${value} at the converter, the least it works on${more}`
        : `the cable holds it back, leaving ${value} at the bank${more}`;
    default:
      return `held by ${limit.name} (${value})${more}`;
  }
}
