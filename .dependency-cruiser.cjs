/**
 * The layers: apps -> charts, job -> catalogue, sim. Catalogue may import sim; sim imports none of ours. Inside sim the
 * parts do not know one another: stay joins them, answers asks stay. Run by apps/chores/src/checkLayers.ts, which also fails when
 * no module was found, so that an empty run never passes for a clean one.
 */
const parts = ["sun", "air", "array", "bank", "loads", "feed"];
const own = (name) => `^packages/${name}/`;

const partsApart = parts.map((part) => ({
  name: `sim-${part}-stands-alone`,
  comment: "A part of the simulation imports itself, ../study.ts and ../numeric only; stay joins the parts.",
  severity: "error",
  from: { path: `^packages/sim/src/${part}/` },
  to: { path: "^packages/sim/src/", pathNot: `^packages/sim/src/(${part}/|numeric/|study\\.ts$)` },
}));

/** @type {import("dependency-cruiser").IConfiguration} */
module.exports = {
  forbidden: [
    {
      name: "no-cycles",
      comment: "Types may name each other in a circle; code may not.",
      severity: "error",
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ["type-only"] } },
    },
    {
      name: "everything-resolves",
      comment: "An import that is not found would hide what it leads to.",
      severity: "error",
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: "sim-imports-none-of-ours",
      severity: "error",
      from: { path: own("sim") },
      to: { path: "^(packages|apps)/", pathNot: "^packages/sim/" },
    },
    {
      name: "sim-does-no-input-or-output",
      severity: "error",
      from: { path: own("sim") },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "catalogue-imports-sim-only",
      severity: "error",
      from: { path: own("catalogue") },
      to: { path: "^(packages|apps)/", pathNot: "^packages/(catalogue|sim)/" },
    },
    {
      name: "job-imports-catalogue-and-sim-only",
      severity: "error",
      from: { path: own("job") },
      to: { path: "^(packages|apps)/", pathNot: "^packages/(job|catalogue|sim)/" },
    },
    {
      name: "charts-imports-sim-only",
      severity: "error",
      from: { path: own("charts") },
      to: { path: "^(packages|apps)/", pathNot: "^packages/(charts|sim)/" },
    },
    {
      name: "handout-imports-no-app",
      severity: "error",
      from: { path: own("handout") },
      to: { path: "^(packages|apps)/", pathNot: "^packages/(handout|job|catalogue|charts|sim)/" },
    },
    {
      name: "apps-do-not-import-each-other",
      severity: "error",
      from: { path: "^apps/([^/]+)/" },
      to: { path: "^apps/", pathNot: "^apps/$1/" },
    },
    ...partsApart,
    {
      name: "sim-numeric-imports-nothing",
      severity: "error",
      from: { path: "^packages/sim/src/numeric/" },
      to: { path: "^packages/sim/src/", pathNot: "^packages/sim/src/numeric/" },
    },
    {
      name: "sim-stay-does-not-ask-answers",
      severity: "error",
      from: { path: "^packages/sim/src/stay/" },
      to: { path: "^packages/sim/src/(answers/|index\\.ts$)" },
    },
    {
      name: "sim-inside-does-not-import-its-index",
      severity: "error",
      from: { path: "^packages/sim/src/.+/" },
      to: { path: "^packages/sim/src/index\\.ts$" },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "(^|/)(dist|coverage)/" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["source", "import", "types", "default"],
      extensions: [".ts", ".js", ".json"],
    },
  },
};
