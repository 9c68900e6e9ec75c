import { chemistries } from "../bank/chemistries.ts";
import type { SizeRequest, SizeStaircase } from "./sizeTypes.ts";
import type { SizePoint } from "./types.ts";

const named = ({ bank_Ah, array_W, chemistry }: SizePoint): string =>
  `${bank_Ah} Ah of ${chemistries[chemistry].name} with ${array_W} W`;

const percent = (share: number): string => `${Math.round(share * 100)} %`;

const asked = ({ nights, chance, months }: SizeRequest): string =>
  `${nights} ${nights === 1 ? "night" : "nights"} with a chance of ${percent(chance)}${months.length > 1 ? " in the worst of the months asked" : ""}`;

export function reasonForPick(request: SizeRequest, pick: SizePoint, fitting: readonly SizePoint[]): string {
  const by =
    pick.price !== null
      ? "the cheapest"
      : pick.mass_kg !== null
        ? "the lightest (prices are not all known)"
        : "the smallest (neither prices nor masses are all known)";
  const among =
    fitting.length === 1 ? "the only pair that fits" : `${by} of the ${fitting.length} smallest pairs that do`;
  return `${named(pick)} lasts ${asked(request)}, in ${percent(pick.chance)} of skies: ${among}.`;
}

/** Roof, payload and budget, or the sun itself: told apart by what the ladder could do without them. */
export function whatStandsInTheWay(
  request: SizeRequest,
  staircases: readonly SizeStaircase[],
  nearest: SizePoint | null,
): string {
  const corners = staircases.flatMap(({ corners }) => corners);
  const miss =
    nearest === null
      ? "No pair fits roof, payload and budget at all."
      : `The nearest is ${named(nearest)}, with a chance of ${percent(nearest.chance)}.`;
  if (corners.length > 0) {
    const why = [request.budget === null ? "" : "the budget", request.payload_kg === null ? "" : "the payload"].filter(
      (text) => text !== "",
    );
    return `${named(corners[0]!)} would last ${asked(request)}, but not within ${why.join(" and ")}. ${miss}`;
  }
  const roofHolds = request.roof_W !== null && request.arrays.some(({ watts }) => watts > request.roof_W!);
  const sun = roofHolds
    ? `the roof, which takes no more than ${request.roof_W} W, stands in the way`
    : "more sun than the largest array on the ladder gives in those months, a smaller load, or charging on the way is needed";
  return `Nothing on the ladder lasts ${asked(request)}: ${sun}. ${miss}`;
}
