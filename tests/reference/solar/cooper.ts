/**
 * The handbook's simpler formulas for declination and distance, here only so that its tables can be held against our
 * equations with its own inputs: Cooper (1969), Duffie & Beckman, eqs. 1.6.1a and 1.4.1a.
 */
export const cooperDeclination_deg = (n: number): number => 23.45 * Math.sin((2 * Math.PI * (284 + n)) / 365);
export const cosineDistance = (n: number): number => 1 + 0.033 * Math.cos((2 * Math.PI * n) / 365);
