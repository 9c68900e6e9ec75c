export { hourlyAir_C } from "./hourlyAir.ts";
export { meanAir_C } from "./meanAir.ts";
