import leven from "leven";

const bare = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]/g, "");
const withoutUnit = (name: string): string => bare(name.replace(/_[^_]*(_day|_per_K)?$/, ""));

function distance(typed: string, name: string): number {
  if (bare(typed) === bare(name)) return 0;
  if (withoutUnit(typed) === withoutUnit(name) || bare(typed) === withoutUnit(name)) return 0.5;
  if (bare(typed).length >= 3 && bare(name).startsWith(bare(typed))) return 1; // cut short, as "lon" of longitude
  return leven(bare(typed), bare(name));
}

/** The known name nearest to a mistyped one; null where nothing is near. Case, underscores and a lost unit count for little. */
export function nearName(typed: string, names: readonly string[]): string | null {
  if (typed.length > 60) return null;
  const most = Math.max(1, Math.floor(typed.length / 3));
  const ranked = names.map((name) => ({ name, far: distance(typed, name) })).sort((a, b) => a.far - b.far);
  const best = ranked[0];
  return best !== undefined && best.far <= most ? best.name : null;
}
