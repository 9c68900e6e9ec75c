/**
 * All that printing needs, fetched once there is something to print. Named one by one, so that nothing else of the package
 * comes along.
 */
export { customerPage, fitterPage, handoutStyles } from "@stayput/handout";
export { readLogo } from "./readLogo.ts";
export { savePage } from "./savePage.ts";
