/** Property tests run from one seed, so that a failure in CI is the same failure here. FC_SEED draws others, FC_RUNS more. */
export const propertyRuns = {
  seed: Number(process.env["FC_SEED"] ?? 20261125),
  numRuns: Number(process.env["FC_RUNS"] ?? 100),
};
