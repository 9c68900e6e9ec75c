import type { Keeper } from "../keep/keeper.ts";

/** Job files let go anywhere on the page are opened; while one is held over it, the page says so. */
export function takeDrops(keeper: Keeper, page: HTMLElement = document.documentElement): void {
  const holds = (event: DragEvent): boolean => event.dataTransfer?.types.includes("Files") === true;
  const say = (over: boolean): void => void page.toggleAttribute("data-over", over);
  page.addEventListener("dragover", (event) => {
    if (!holds(event)) return;
    event.preventDefault();
    say(true);
  });
  page.addEventListener("dragleave", (event) => {
    if (event.relatedTarget === null) say(false);
  });
  page.addEventListener("drop", (event) => {
    say(false);
    if (!holds(event)) return;
    event.preventDefault();
    void keeper.takeFiles(Array.from(event.dataTransfer?.files ?? []));
  });
}
