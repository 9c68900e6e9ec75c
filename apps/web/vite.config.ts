import { defaultClientConditions, defineConfig, type UserConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { viteSingleFile } from "vite-plugin-singlefile";
import { inlineWorker, sealed } from "./build/onePage.ts";
import { unusedShapesFallAway, withoutJsonSchema } from "./build/slim.ts";
import { webManifest } from "./build/webManifest.ts";

/** Relative addresses throughout, so that the built page runs from any folder of any static host. */
const common: UserConfig = {
  base: "./",
  resolve: { conditions: ["source", ...defaultClientConditions] },
  preview: { open: false },
};

const hosted: UserConfig = {
  ...common,
  worker: { format: "es", plugins: () => [withoutJsonSchema()] },
  build: {
    target: "es2022",
    // fonts and pictures stay files: the page's policy allows no data: address for them
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  plugins: [
    unusedShapesFallAway(),
    VitePWA({
      strategies: "injectManifest",
      srcDir: "src/offline",
      filename: "sw.ts",
      // the page registers it itself: its policy allows no inline script, and a newer version waits to be asked
      injectRegister: false,
      registerType: "prompt",
      manifest: webManifest,
      injectManifest: {
        globPatterns: ["**/*.{js,css,html,svg,png,woff2,webmanifest}"],
        maximumFileSizeToCacheInBytes: 6_000_000,
      },
    }),
  ],
};

/** The whole page as one file, to be opened from disk: `npm run build:single`. */
const single: UserConfig = {
  ...common,
  publicDir: false,
  worker: { format: "iife", plugins: () => [withoutJsonSchema()] },
  build: { target: "es2022", outDir: "single/dist", modulePreload: { polyfill: false } },
  plugins: [
    unusedShapesFallAway(),
    inlineWorker(),
    viteSingleFile({ removeViteModuleLoader: true, outputFileName: "stayput.html" }),
    sealed(),
  ],
};

export default defineConfig(({ mode }) => (mode === "single" ? single : hosted));
