import { uniqueId } from "./uniqueId.ts";

/** This visit to the page, told apart from every other, on any device. */
export const visit = uniqueId();
