import type { JobInput } from "@stayput/job";

/** The job without one load, and without whatever pointed at it. */
export function withoutLoad(job: JobInput, id: string): JobInput {
  return {
    ...job,
    loads: job.loads.filter((load) => load.id !== id),
    setups: job.setups.map((setup) => {
      const drop = setup.loads?.drop?.filter((each) => each !== id);
      const runs = setup.runs?.filter((run) => run.load !== id);
      return {
        ...setup,
        ...(drop === undefined ? {} : { loads: { ...setup.loads, drop } }),
        ...(runs === undefined ? {} : { runs }),
      };
    }),
  };
}
