/**
 * What files and links need of the packages, named one by one: a package fetched whole at run time would come with all
 * that it has, and make the first load heavier by a half.
 */
export { answerText, csv, hoursColumns, packJob, parseJob } from "@stayput/job";
export { explain, ledgerOf } from "@stayput/sim";
