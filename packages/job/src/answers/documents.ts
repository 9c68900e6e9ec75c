/**
 * What each verb's `--json` prints, as types: a head that says of what and under which assumptions, and then the answer of
 * the simulation as it stands. The JSON Schemas in `shared/schema` are made from these types, descriptions and all, by
 * `npm run schemas`, and tests hold real answers to them.
 */
import type {
  CompareAnswer,
  CrossCheckAnswer,
  ExplainAnswer,
  MatchAnswer,
  SizeAnswer,
  UpgradesAnswer,
  WiringAnswer,
  YearAnswer,
} from "@stayput/sim";
import type { Fault } from "../faults/fault.ts";
import type { PlaceFound } from "../resolve/climate.ts";

/** Of what an answer is. */
export interface DocumentHead {
  /** of the job */
  readonly title: string;
  readonly place: PlaceFound;
  readonly arrive: { readonly month: number; readonly day: number };
  readonly nights: number;
  /** currency of all prices, ISO 4217; null: bare numbers */
  readonly currency: string | null;
  /** what was assumed, and how good the figures of the place are, each in a sentence */
  readonly assumed: readonly string[];
}

/** How long each setup lasts, where the energy goes, what flattens it and what would change it. */
export interface ExplainDocument extends DocumentHead, ExplainAnswer {
  /** of the trip */
  readonly nights: number;
}

/** The setups side by side under the same skies. */
export interface CompareDocument extends DocumentHead, CompareAnswer {
  /** of the trip */
  readonly nights: number;
}

/** The smallest banks and arrays that do what is asked. */
export interface SizeDocument extends DocumentHead, SizeAnswer {
  /** that were asked */
  readonly nights: number;
  /** whose loads and chargers the sizes are for */
  readonly setup: string;
  readonly draws: number;
  readonly seed: number;
  /** the handbook's arithmetic beside the pick, or beside the nearest; null where there is neither, or it gives no size */
  readonly handbook: CrossCheckAnswer | null;
}

/** What would explain what was seen. */
export interface MatchDocument extends DocumentHead, MatchAnswer {
  /** the setup that it was seen of */
  readonly setup: string;
  readonly draws: number;
}

/** Each setup's runs of wire. */
export interface WiringDocument extends DocumentHead {
  readonly setups: readonly WiringAnswer[];
}

/** Every hour of one setup: for each column, one value an hour. */
export interface HoursDocument {
  readonly setup: string;
  readonly hours: Readonly<Record<string, readonly (number | string)[]>>;
}

/** A valid job, what it holds and what was assumed. An invalid one prints its faults on standard error. */
export interface CheckDocument {
  readonly valid: true;
  readonly title: string;
  readonly place: PlaceFound;
  readonly arrive: { readonly month: number; readonly day: number };
  readonly nights: number;
  readonly setups: readonly { readonly id: string; readonly name: string }[];
  readonly assumed: readonly string[];
}

/** Places known by a name, an id or a country. */
export interface PlacesDocument {
  readonly places: readonly {
    /** to put in a job */
    readonly id: string;
    readonly name: string;
    /** ISO 3166-1, two letters */
    readonly country: string;
    readonly countryName: string;
    readonly latitude_deg: number;
    readonly longitude_deg: number;
    readonly elev_m: number | null;
    /** standard time's lead on UTC */
    readonly utcOffset_h: number;
    /** how good its figures are */
    readonly notes: readonly string[];
  }[];
}

/** Everything in a job that is not as it must be. */
export interface FaultsDocument {
  readonly faults: readonly Fault[];
}

/** What `--lines` prints in the place of a line that holds no valid job. */
export interface LineFaultsDocument {
  /** in the input, from 1 */
  readonly line: number;
  readonly faults: readonly (Pick<Fault, "message"> & Partial<Omit<Fault, "line">>)[];
}

/** Days and chance of the same trip begun in each month; the month and day of arrival are the job's own. */
export interface YearDocument extends DocumentHead, YearAnswer {
  readonly draws: number;
  readonly seed: number;
  /** how far was looked: null days are beyond it */
  readonly horizon_days: number;
}

/** What each change of a proposal is worth. */
export interface UpgradesDocument extends DocumentHead, UpgradesAnswer {
  readonly draws: number;
  /** null where the skies were given from outside */
  readonly seed: number | null;
}
