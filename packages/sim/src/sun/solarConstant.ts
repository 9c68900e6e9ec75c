/** Kopp & Lean (2011), Geophys. Res. Lett. 38:L01706. Handbook examples use 1367: pass it to reproduce them. [W/m²] */
export const SOLAR_CONSTANT_W_m2 = 1361;
