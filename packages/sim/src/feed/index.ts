export { cableResistance_Ohm, copperFactor, perKm_Ohm, tableFor, type Cable } from "./cable.ts";
export { class2Plain, class5Plain, class5Tinned, standardAreas_mm2, type ConductorTable } from "./conductors.ts";
export { awgArea_mm2, awgAtLeast, awgDiameter_mm, awgName, awgPerKm_Ohm } from "./awg.ts";
export { onTheWayThrough_A, pathResistance_Ohm, pieceLimit_A, pieceName, pieceResistance_Ohm } from "./path.ts";
export {
  prepareFeed,
  sourceShares,
  type AmpLimit,
  type ConverterPart,
  type FeedCircuit,
  type SourceShare,
} from "./circuit.ts";
export {
  converterInput_A,
  converterLimit,
  converterHeld_W,
  converterMost_A,
  type ConverterLimit,
} from "./converter.ts";
export { roughFeed_A } from "./roughFeed.ts";
export { relayAmps_A, relayOverruns, type Overrun } from "./relay.ts";
export { ampacity_A, ampacityTable, areaForAmps_mm2, layingFactor, type Laying } from "./ampacity.ts";
export * from "./alternator.ts";
export { diameterCables, soldByDiameter, type DiameterCable } from "./byDiameter.ts";
export { conductorNamed, type NamedConductor } from "./conductorNamed.ts";
export { hotConnector, hotConnector_A } from "./connectors.ts";
export { dropTable, gaugeByDrop, gaugeNameByDrop } from "./dropTable.ts";
export { fridgeCutOuts } from "./fridgeCutOuts.ts";
export { fuseDistance, fuseKinds, fuseMargin, fuseSizes_A, type FuseKind } from "./fuses.ts";
export { pathDrop_V, pathFlows, type PieceFlow } from "./profile.ts";
