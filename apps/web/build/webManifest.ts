import type { ManifestOptions } from "vite-plugin-pwa";

/** What an installed page is called and looks like, and what the share sheet of a phone may send it. */
export const webManifest: Partial<ManifestOptions> = {
  id: "./",
  name: "Stayput: the job sheet",
  short_name: "Stayput",
  description: "How long a caravan or camper lasts off grid, why, and what would fix it.",
  lang: "en",
  dir: "ltr",
  start_url: "./",
  scope: "./",
  display: "standalone",
  background_color: "#fbf7ec",
  theme_color: "#fbf7ec",
  categories: ["utilities", "productivity"],
  icons: [
    { src: "mark.svg", sizes: "any", type: "image/svg+xml", purpose: "any" },
    { src: "mark-192.png", sizes: "192x192", type: "image/png", purpose: "any" },
    { src: "mark-512.png", sizes: "512x512", type: "image/png", purpose: "any" },
    { src: "mark-maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
  ],
  share_target: {
    action: "take-shared",
    method: "POST",
    enctype: "multipart/form-data",
    params: {
      title: "title",
      text: "text",
      url: "url",
      files: [{ name: "jobs", accept: ["application/json", ".json"] }],
    },
  },
};
