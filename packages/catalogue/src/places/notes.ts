import type { Place, TemperatureQuality } from "./place.ts";

/** What was found when the sources were compared with measurements; shared/climate/SOURCES.md has the comparison. */
const doubtfulSun =
  "Sunshine here is doubtful: satellite figures run too high on cloudy or mountainous coasts, by up to a quarter. Plan with a margin.";

const temperatureWords: Readonly<Record<TemperatureQuality, string | null>> = {
  obs: null,
  mid: "Temperatures here are put together from an incomplete station record and may be a degree or two out.",
  blend: "Temperatures here join a short station record with other sources and may be a few degrees out.",
  normal: "Temperatures here are an older long-term mean, not the years 2003 to 2021 used elsewhere.",
  interp: "Temperatures here are worked out from stations around; none was used at the place itself.",
};

/** Under this many years a mean of monthly extremes is noticeably a matter of luck. Chosen. */
const fewYears = 5;

/** What to tell the user when this place is chosen, in plain words; empty where the data are as good as anywhere. */
export function placeNotes(place: Place): string[] {
  const notes: string[] = [];
  if (place.radiationFlag === "check") notes.push(doubtfulSun);
  const words = temperatureWords[place.temperatureQuality];
  if (words) notes.push(words);
  else if (place.temperatureYears < fewYears)
    notes.push(`Temperatures here rest on ${place.temperatureYears} years of record only.`);
  return notes;
}
