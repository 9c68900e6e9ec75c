export type * from "./study.ts";
export type * from "./answers/types.ts";
export * from "./bank/index.ts";
