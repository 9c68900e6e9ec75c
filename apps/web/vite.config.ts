import { defaultClientConditions, defineConfig } from "vite";

/** Relative addresses throughout, so that the built page runs from any folder of any static host. */
export default defineConfig({
  base: "./",
  resolve: { conditions: ["source", ...defaultClientConditions] },
  worker: { format: "es" },
  build: {
    target: "es2022",
    // fonts and pictures stay files: the page's policy allows no data: address for them
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  preview: { open: false },
});
