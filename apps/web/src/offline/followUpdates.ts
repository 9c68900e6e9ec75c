import type { Keeper } from "../keep/keeper.ts";
import { takeShared } from "./sharedFile.ts";

/**
 * Keeps the page usable with the network gone, and follows newer versions of it: one waits until it is asked for here or
 * the page is next begun, and the job is written before the page changes.
 */
export function followUpdates(keeper: Keeper): void {
  if (!("serviceWorker" in navigator) || !import.meta.env.PROD || location.protocol === "file:") return;
  void openShared(keeper);
  const { serviceWorker } = navigator;
  const had = serviceWorker.controller !== null;
  let asked = false;
  serviceWorker.addEventListener("controllerchange", () => {
    if (asked) void reload(keeper);
    else if (had) sayReload(keeper);
  });
  const offer = (waiting: ServiceWorker): void =>
    keeper.say({
      about: "version",
      words: "A newer version of this page is ready. It comes in by itself when the page is next begun.",
      deeds: [
        {
          label: "Use it now",
          run: () => {
            asked = true;
            waiting.postMessage("take over");
          },
        },
      ],
    });
  whenQuiet(() => {
    serviceWorker.register(new URL("sw.js", document.baseURI)).then(
      (registration) => watch(registration, offer),
      () => undefined, // a browser that refuses one still has the page while there is a network
    );
  });
}

/** Fetching everything for later must not hold up the first answer. */
function whenQuiet(work: () => void): void {
  const wait = (): void => void setTimeout(work, 1500);
  if (document.readyState === "complete") wait();
  else window.addEventListener("load", wait, { once: true });
}

function watch(registration: ServiceWorkerRegistration, offer: (waiting: ServiceWorker) => void): void {
  const { waiting } = registration;
  if (waiting !== null && navigator.serviceWorker.controller !== null) offer(waiting);
  registration.addEventListener("updatefound", () => {
    const coming = registration.installing;
    coming?.addEventListener("statechange", () => {
      if (coming.state === "installed" && navigator.serviceWorker.controller !== null) offer(coming);
    });
  });
}

async function reload(keeper: Keeper): Promise<void> {
  await keeper.now?.settled();
  location.reload();
}

/** Another tab has brought the newer version in: parts of this one that are not loaded yet are gone. */
function sayReload(keeper: Keeper): void {
  keeper.say({
    about: "version",
    words: "A newer version of this page came in from another tab.",
    deeds: [{ label: "Reload", run: () => void reload(keeper) }],
  });
}

/** A file from another app's share sheet is opened as if it had been picked here. */
async function openShared(keeper: Keeper): Promise<void> {
  if (new URLSearchParams(location.search).get("shared") === null) return;
  history.replaceState(history.state, "", location.pathname + location.hash);
  const shared = await takeShared();
  if (shared === null) return;
  await keeper.begun;
  const link = /#(\d+\.[\w-]+)\s*$/.exec(shared.text);
  if (link?.[1] !== undefined) await keeper.takeLink(link[1]);
  else await keeper.takeText(shared.text, shared.name);
}
