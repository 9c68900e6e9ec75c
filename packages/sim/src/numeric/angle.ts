export const DEG = Math.PI / 180;
