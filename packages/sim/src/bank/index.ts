export * from "./acceptance.ts";
export * from "./bankModel.ts";
export * from "./chemistries.ts";
export * from "./twoTanks.ts";
