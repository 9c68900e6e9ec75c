import { chargePictureOf, type ChargePicture } from "@stayput/charts";
import { chemistries, darkHours } from "@stayput/sim";
import type { Handover } from "../handover.ts";
import { bounded } from "../words/bounded.ts";
import type { Option } from "./options.ts";

/** From this many options on, names are cut short in the picture (the table has them whole) and the food's mark left out. */
const many = 4;

/** Characters of a name in the picture, so that it keeps to one line where there are many. */
const nameLength = (options: number): number => (options < many ? 60 : options === many ? 16 : 12);

/** The how-long picture of these options, their letters before their names. */
export function howLong({ explained, study }: Handover, options: readonly Option[]): ChargePicture {
  const reserves = Object.fromEntries(
    options.map(({ setup: { id, bank } }) => [id, bank.reserve ?? chemistries[bank.chemistry].reserve]),
  );
  const picture = chargePictureOf(explained, { reserves, dark: darkHours(study) });
  const crowded = options.length >= many;
  const nameOf = new Map(
    options.map(({ setup, letter, name }) => [setup.id, `${letter}: ${bounded(name, nameLength(options.length))}`]),
  );
  return {
    ...picture,
    setups: picture.setups
      .filter(({ id }) => nameOf.has(id))
      .map((setup) => ({
        ...setup,
        name: nameOf.get(setup.id) ?? setup.name,
        foodPasses5C_days: crowded ? null : setup.foodPasses5C_days,
      })),
  };
}
