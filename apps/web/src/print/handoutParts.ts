/**
 * What printing needs of the packages, fetched once there is something to print: named one by one, so that nothing else
 * of them comes along.
 */
export { customerPage, fitterPage, handoutHtml, handoutStyles, logoDataUrl, MOST_LOGO_BYTES } from "@stayput/handout";
export { default as fontUrl } from "@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2?url";
