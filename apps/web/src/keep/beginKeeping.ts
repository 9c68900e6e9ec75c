import { takeDrops } from "../share/dropFiles.ts";
import type { StaySheet } from "../staySheet.ts";
import { Keeper } from "./keeper.ts";
import { start } from "./start.ts";

/** Begins with whatever job is to be on the sheet, and keeps it from then on. */
export function beginKeeping(sheet: StaySheet): Keeper {
  const keeper = new Keeper({
    open: (store) => sheet.open(store),
    store: () => sheet.store,
    files: sheet.answers.files,
    placeName: () => sheet.placeName,
  });
  sheet.keeper = keeper;
  sheet.addEventListener("place-named", () => keeper.placeNamed());
  takeDrops(keeper);
  keeper.begun = start(keeper);
  return keeper;
}
