export type * from "./study.ts";
export type * from "./answers/types.ts";
export * from "./bank/index.ts";
export * from "./sun/index.ts";
export * from "./air/index.ts";
export * from "./array/index.ts";
export * from "./feed/index.ts";
