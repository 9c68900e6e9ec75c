interface Point {
  readonly name: string;
  readonly latitude_deg: number;
  readonly longitude_deg: number | null;
}

/** A place by name with its coordinates: "Upington (28.4° S, 21.3° E)". */
export function placeSaid({ name, latitude_deg, longitude_deg }: Point): string {
  const longitude = longitude_deg === null ? "" : `, ${degreesSaid(longitude_deg, "E", "W")}`;
  return `${name} (${degreesSaid(latitude_deg, "N", "S")}${longitude})`;
}

/** Degrees with the side of the globe: "28.4° S". */
export const degreesSaid = (value: number, positive: string, negative: string): string =>
  `${Math.abs(value).toFixed(1)}° ${value < 0 ? negative : positive}`;
