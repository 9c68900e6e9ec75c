/**
 * Cable sold by its diameter over the insulation: "6 mm auto" is a 6 mm thick cable, not 6 mm² of copper. What each holds
 * differs from maker to maker; measure the strands, or ask for the copper in writing.
 */
export interface DiameterCable {
  readonly diameter_mm: number;
  /** copper that it usually holds [mm²] */
  readonly area_mm2: number;
  readonly standing: string;
}

const practice = "common practice, no source";

/** The usual diameters. */
export const diameterCables: readonly DiameterCable[] = [
  { diameter_mm: 2.5, area_mm2: 0.64, standing: practice },
  { diameter_mm: 3, area_mm2: 1.13, standing: practice },
  { diameter_mm: 4, area_mm2: 1.84, standing: practice },
  { diameter_mm: 5, area_mm2: 2.9, standing: practice },
  { diameter_mm: 6, area_mm2: 4.6, standing: practice },
];

/** The row for a diameter; null where none is listed. */
export const soldByDiameter = (diameter_mm: number): DiameterCable | null =>
  diameterCables.find((row) => row.diameter_mm === diameter_mm) ?? null;
