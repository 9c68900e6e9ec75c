/**
 * How each figure of the bench comes about, in words, with where the equations come from and how far they are to be
 * trusted. The model's own files carry the same sources beside the code.
 */
export interface Step {
  readonly says: string;
  readonly source: string;
  /** the words that the catalogue uses: published; from memory; common practice, no source; chosen */
  readonly standing: string;
}

export type FigureId = "days" | "day" | "uses" | "year" | "sizes" | "run" | "options";

const sky: Step = {
  says: "Sun on the flat = the month's mean, spread over the day by the sun's height; each drawn sky has its days clearer or duller than the mean, one day leaning on the day before.",
  source:
    "Collares-Pereira & Rabl 1979 (hours of the day); Graham, Hollands & Huget 1988 (days); NASA SSE Release 6.0 (monthly means)",
  standing: "published",
};
const tilt: Step = {
  says: "Sun on the panels = beam turned to their plane + sky light + light off the ground.",
  source: "Hay, Davies, Klucher, Reindl, as in Duffie & Beckman, Solar Engineering of Thermal Processes",
  standing: "published",
};
const panel: Step = {
  says: "Panel's output = rated watts × sun / 1000 W/m² × (1 − dirt) × loss by heat above 25 °C; the charger passes its share of that, up to its amps.",
  source: "cell temperature by mounting; temperature coefficient from typical data sheets",
  standing: "published; coefficients from memory",
};
const bank: Step = {
  says: "Charge held = charge before + what goes in × charge efficiency − what goes out, in two tanks, so that a hard draw finds less than a gentle one.",
  source: "Manwell & McGowan 1993; fitted to a capacity-by-rate table of a valve-regulated lead-acid bank",
  standing: "published; other chemistries from memory",
};
const cutOff: Step = {
  says: "Loads drop when volts under load = rested volts − amps × resistance fall to the cut-off; lithium's own protection opens at 0 %.",
  source: "rested volts and resistance by chemistry",
  standing: "common practice, no source",
};
const fridge: Step = {
  says: "A compressor fridge's draw = heat let in ÷ what its compressor moves for each watt, both by the hour's temperatures, scaled so that it meets its rating.",
  source: "heat balance of the cabinet; Carnot share calibrated on the rating given",
  standing: "own computation from the published equation",
};
const spread: Step = {
  says: "P10, P50, P90 = the days by which a tenth, half and nine tenths of 200 drawn skies have it flat, parked from arrival at 15:00. All setups meet the same skies.",
  source: "nearest rank of the sorted draws",
  standing: "published",
};

export const working: Readonly<Record<FigureId, { readonly title: string; readonly steps: readonly Step[] }>> = {
  days: { title: "How the days come about", steps: [sky, tilt, panel, fridge, bank, cutOff, spread] },
  day: {
    title: "How the day comes about",
    steps: [
      {
        says: "Each hour of the clock = the mean of that hour over the trip's days while the loads were powered, under the average sky, drives and mains included.",
        source: "the hourly ledger: sun used + road + mains + from the bank = served + into the bank",
        standing: "own computation from the published equation",
      },
      sky,
      panel,
      fridge,
    ],
  },
  uses: {
    title: "How the shares come about",
    steps: [
      {
        says: "Watt-hours a day = watts × how many × hours on × share of the time on; through the inverter, its losses go to the loads that keep it on.",
        source: "the load list",
        standing: "own computation from the published equation",
      },
      fridge,
      {
        says: "Days without it = the same 200 skies run again with that load left out.",
        source: "paired runs under one seed",
        standing: "own computation from the published equation",
      },
    ],
  },
  year: {
    title: "How the months come about",
    steps: [
      {
        says: "The same trip begun on the same day of each month, with that month's sun and air.",
        source: "NASA SSE Release 6.0; Deutscher Wetterdienst CLIMAT",
        standing: "published",
      },
      spread,
    ],
  },
  sizes: {
    title: "How the sizes come about",
    steps: [
      {
        says: "Each bank with each array is held against the same 100 skies in the worst of the months asked; the chance is the share of skies in which the loads never drop.",
        source: "the same hourly runs as the bench",
        standing: "own computation from the published equation",
      },
      {
        says: "Prices are invented and masses typical, unless the job brings its own list.",
        source: "the catalogue",
        standing: "invented for demonstration; from memory",
      },
    ],
  },
  run: {
    title: "How the volts and amps come about",
    steps: [
      {
        says: "Volts at the next point = volts before − amps × resistance there and back; the amps settle where source, path, charger and bank agree.",
        source: "IEC 60228 conductor resistances, corrected for temperature",
        standing: "published",
      },
      { says: "A plug's contacts, in good order.", source: "typical data sheets", standing: "from memory" },
      bank,
    ],
  },
  options: {
    title: "How the options are compared",
    steps: [
      spread,
      {
        says: "Chance = share of the 200 skies under which the trip as described, drives and mains included, never has the loads drop.",
        source: "the same skies for every setup",
        standing: "own computation from the published equation",
      },
      {
        says: "Hours of driving = from the reserve to the charge named, the vehicle alone, no sun.",
        source: "the charge run and the bank's acceptance",
        standing: "own computation from the published equation",
      },
    ],
  },
};
