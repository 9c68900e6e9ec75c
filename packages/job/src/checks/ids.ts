import { asList, at } from "../faults/at.ts";
import type { Found, Keys } from "../faults/fault.ts";
import { nearName } from "../faults/nearName.ts";
import { oneLine, show } from "../faults/show.ts";
import { everyLoad, parts, type Part } from "./read.ts";

/** The inverter's own losses go by this name in the answers. */
const RESERVED = "inverter";

const idOf = ({ fields }: Part): string | null => (typeof fields["id"] === "string" ? fields["id"] : null);
const idsOf = (list: readonly Part[]): string[] => list.map(idOf).filter((id) => id !== null);

/** Ids are unique, and what points at a load finds one. */
export function idFaults(job: unknown): Found[] {
  const loads = parts(job, "loads");
  const setups = parts(job, "setups");
  return [
    ...twice(loads, [], "the loads"),
    ...twice(setups, [], "the setups"),
    ...everyLoad(job)
      .filter((load) => idOf(load) === RESERVED)
      .map(reserved),
    ...setups.flatMap((setup) => setupFaults(job, setup, idsOf(loads))),
  ];
}

function setupFaults(job: unknown, setup: Part, jobLoads: readonly string[]): Found[] {
  const dropped = asList(at(job, [...setup.keys, "loads", "drop"]));
  const added = parts(job, ...setup.keys, "loads", "add");
  const kept = jobLoads.filter((id) => !dropped.includes(id));
  const here = [...kept, ...idsOf(added)];
  const own: Known = { ids: jobLoads, where: "the job", restsOn: idsUnder(job, ["loads"]) };
  const after: Known = {
    ids: here,
    where: "this setup",
    restsOn: [...own.restsOn, [...setup.keys, "loads", "drop"], ...idsUnder(job, [...setup.keys, "loads", "add"])],
  };
  const drops = dropped.flatMap((id, i) => missing([...setup.keys, "loads", "drop", i], id, own));
  const runs = parts(job, ...setup.keys, "runs").flatMap((run) =>
    "load" in run.fields ? missing([...run.keys, "load"], run.fields["load"], after) : [],
  );
  return [...twice(added, kept, "this setup's loads"), ...drops, ...runs];
}

/** The loads that a reference may name, and the fields that decide which those are. */
interface Known {
  readonly ids: readonly string[];
  readonly where: string;
  readonly restsOn: readonly Keys[];
}

/** A list of loads and the id of each. */
const idsUnder = (job: unknown, keys: Keys): Keys[] => [
  keys,
  ...parts(job, ...keys).map((load) => [...load.keys, "id"]),
];

function twice(list: readonly Part[], taken: readonly string[], where: string): Found[] {
  const seen = new Set(taken);
  return list.flatMap((entry) => {
    const id = idOf(entry);
    if (id === null) return [];
    if (!seen.has(id)) {
      seen.add(id);
      return [];
    }
    const accepted = `an id that no other of ${where} has`;
    return [
      {
        keys: [...entry.keys, "id"],
        given: show(id),
        accepted,
        says: `${oneLine(id)} is taken; it must be ${accepted}`,
      },
    ];
  });
}

function missing(keys: Keys, id: unknown, { ids, where, restsOn }: Known): Found[] {
  if (typeof id !== "string" || ids.includes(id)) return [];
  const near = nearName(id, ids);
  const hint =
    near === null ? `its loads are ${ids.slice(0, 12).join(", ") || "none"}` : `did you mean ${oneLine(near)}?`;
  const says = `${where} has no load ${oneLine(id)}; ${hint}`;
  return [{ keys, given: show(id), accepted: `the id of a load of ${where}`, says, restsOn }];
}

const reserved = ({ keys }: Part): Found => ({
  keys: [...keys, "id"],
  given: show(RESERVED),
  accepted: "another id",
  says: `the id "${RESERVED}" is taken by the inverter's own losses; give another`,
});
