/** Apart, since its contours are wanted only once sizes are asked for. */
export { sizeKind } from "@stayput/charts";
