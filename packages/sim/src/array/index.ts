export { arrayCurrent_A } from "./arrayCurrent.ts";
export { arrayOutput_W } from "./arrayOutput.ts";
export { cellTemperature_C } from "./cellTemperature.ts";
export { ARRAY_WIRING_LOSS, ROSS_K_m2_W, SOLAR_CHARGERS } from "./figures.ts";
