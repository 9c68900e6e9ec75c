import { dayOfYear, declination_deg, solarLead_h, sunsetHourAngle_deg, type Study } from "@stayput/sim";

/** Clock hours of sunset and sunrise on the day of arrival; null where the sun does not set. */
export function darkHours({ climate, trip }: Study): { from_h: number; to_h: number } | null {
  const day = dayOfYear(trip.month, trip.day);
  const half_h = sunsetHourAngle_deg(climate.latitude_deg, declination_deg(day)) / 15;
  if (half_h >= 12) return null;
  const noon_h = 12 - solarLead_h(climate, day);
  const clock = (hour: number) => ((hour % 24) + 24) % 24;
  return { from_h: clock(noon_h + half_h), to_h: clock(noon_h - half_h) };
}
