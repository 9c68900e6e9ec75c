import { cleanupOutdatedCaches, precacheAndRoute, type PrecacheEntry } from "workbox-precaching";
import { keepShared } from "./sharedFile.ts";

declare const self: ServiceWorkerGlobalScope & { __WB_MANIFEST: (PrecacheEntry | string)[] };

// All that the page is made of, under any folder and with any query: there is one page only.
precacheAndRoute(self.__WB_MANIFEST, { ignoreURLParametersMatching: [/.*/] });
cleanupOutdatedCaches();

// A newer version waits until the page says that all is kept, or until the page is next begun. It is never pressed on one.
self.addEventListener("message", ({ data }) => {
  if (data === "take over") void self.skipWaiting();
});

// A file sent to this page from another app's share sheet: held here, on the device, until the page fetches it.
self.addEventListener("fetch", (event) => {
  const { method, url } = event.request;
  if (method !== "POST" || !new URL(url).pathname.endsWith("/take-shared")) return;
  event.respondWith(
    keepShared(event.request).then(() => Response.redirect(new URL("./?shared", self.registration.scope), 303)),
  );
});
