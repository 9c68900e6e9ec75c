import fc from "fast-check";

/** Property tests run from one printed seed, so that a failure in CI is the same failure here. FC_SEED draws others. */
const seed = Number(process.env["FC_SEED"] ?? 20261125);
fc.configureGlobal({ seed, numRuns: Number(process.env["FC_RUNS"] ?? 100) });
