export { sizingDefaults } from "../defaults.ts";
export { sizeRequest, type SizeAsked, type SizeWishes } from "./sizeRequest.ts";
