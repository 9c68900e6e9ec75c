export { sizeRequest, type SizeAsked, type SizeWishes } from "./sizeRequest.ts";
