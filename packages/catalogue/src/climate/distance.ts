/** Mean radius of the earth [km], IUGG. */
const earth_km = 6371;

/**
 * Great-circle distance of two points given in degrees [km]. Source: the haversine formula; a sphere is within 0.5 % of
 * the true figure of the earth.
 */
export function distance_km(lat1_deg: number, lon1_deg: number, lat2_deg: number, lon2_deg: number): number {
  const radians = Math.PI / 180;
  const across = Math.sin(((lon2_deg - lon1_deg) * radians) / 2);
  const along = Math.sin(((lat2_deg - lat1_deg) * radians) / 2);
  const half = along * along + Math.cos(lat1_deg * radians) * Math.cos(lat2_deg * radians) * across * across;
  return 2 * earth_km * Math.asin(Math.min(1, Math.sqrt(half)));
}
