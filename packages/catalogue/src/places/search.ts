import leven from "leven";
import { fold } from "../search/fold.ts";
import { ranked, search, type Searched } from "../search/match.ts";
import { countries, countryName } from "./countries.ts";
import type { Place } from "./place.ts";
import { places } from "./places.ts";

interface Entry extends Searched {
  readonly place: Place;
}

let index: readonly Entry[] | null = null;

/** Core places first, then by name, so that equally good matches come in that order. */
function entries(): readonly Entry[] {
  const first = (a: Place, b: Place) => Number(b.core) - Number(a.core) || (a.name < b.name ? -1 : 1);
  return (index ??= places.toSorted(first).map((place) => {
    const names = [place.id, place.country, ...(countries[place.country] ?? []), place.region];
    return { place, title: fold(place.name), others: names.map(fold) };
  }));
}

/**
 * Places that meet what is typed, best first: by name, id, country code or country name, without regard to case or
 * accents; starts first, then parts; near spellings where nothing else meets it. Nothing typed gives the core places.
 *
 * @param limit how many at most, 1 or more
 */
export function searchPlaces(text: string, limit = 10): Place[] {
  const typed = fold(text);
  const found = typed ? search(entries(), typed) : entries().filter(({ place }) => place.core);
  return found.slice(0, limit).map(({ place }) => place);
}

/** The places whose id or name is nearest in spelling to `text`, nearest first, however far that is. */
export function nearestPlaces(text: string, count: number): Place[] {
  const typed = fold(text);
  const away = ({ place, title }: Entry) =>
    Math.min(leven(typed, fold(place.id)), leven(typed, title), leven(typed, fold(place.id.slice(3))));
  return ranked(entries(), away)
    .slice(0, count)
    .map(({ place }) => place);
}

/** The same as words for a "no such place" message: `za-upington (Upington, South Africa)`. */
export function nearestNames(text: string, count: number): string[] {
  return nearestPlaces(text, count).map(({ id, name, country }) => `${id} (${name}, ${countryName(country)})`);
}
