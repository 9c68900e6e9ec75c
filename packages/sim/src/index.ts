export type * from "./study.ts";
export type * from "./answers/types.ts";
