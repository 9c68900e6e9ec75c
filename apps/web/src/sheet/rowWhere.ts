import type { JobInput } from "@stayput/job";
import { html, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { LightElement } from "../fields/lightElement.ts";
import type { Found } from "../fields/pickList.ts";
import { insertAt, removeAt } from "../store/at.ts";
import { edit, set } from "../store/edit.ts";
import type { RemoteAnswers } from "../worker/startAnswers.ts";
import { blank, choose, faultNote, type Card } from "./card.ts";
import { noteList, placeNotes } from "./notes.ts";
import { arriveOn, dayOf, daysIn, monthNames, monthOf } from "./months.ts";

type PlaceWay = "name" | "point" | "sky" | "whole";
type Place = JobInput["place"];

const wayOf = (place: Place): PlaceWay =>
  "id" in place ? "name" : "sky" in place ? "sky" : "ghi_kWh_m2_day" in place ? "whole" : "point";

/** Row 1: the place, the month, the nights, and what charges on the way. */
@customElement("row-where")
export class RowWhere extends LightElement {
  @property({ attribute: false }) card!: Card;
  @property({ attribute: false }) answers!: RemoteAnswers;
  @property() placeName = "";

  protected override render(): TemplateResult {
    const { card } = this;
    return html`${this.where()}
      <div class="line">
        ${this.arrival()}${blank(card, ["trip", "nights"], "Nights to last", { unit: "nights" })}
        ${blank(card, ["trip", "startCharge"], "Charge on arrival", { kind: "percent", unit: "%" })}
      </div>
      ${this.driving()}${this.mains()}${this.shade()}
      <details class="more">
        <summary>Fridge bay</summary>
        <div class="line">
          ${blank(card, ["trip", "bayOffset_C"], "Fridge bay warmer than outside by", { unit: "°C" })}
        </div>
      </details>`;
  }

  private where(): TemplateResult {
    const { place } = this.card.job;
    const way = wayOf(place);
    const notes = placeNotes(this.card);
    const ways: [PlaceWay, string][] = [
      ["name", "By name"],
      ["point", "By coordinates"],
      ["sky", "By latitude and sky"],
      ...(way === "whole" ? [["whole", "Its own figures"] as [PlaceWay, string]] : []),
    ];
    return html`<div class="line place">
        ${way === "name" ? this.byName() : blank(this.card, ["place", "name"], "What to call it", { kind: "text" })}
        ${way === "point" ? this.byPoint() : way === "sky" ? this.bySky() : nothing}
      </div>
      <fieldset class="ways">
        <legend class="unseen">How the place is given</legend>
        ${ways.map(
          ([value, label]) =>
            html`<label
              ><input
                type="radio"
                name="place-way"
                .checked=${way === value}
                @change=${() => this.give(value)}
              />${label}</label
            >`,
        )}
      </fieldset>
      ${faultNote(this.card, ["place"])} ${noteList(notes)}`;
  }

  private byName(): TemplateResult {
    const fault = this.card.faults.get("place.id");
    const empty = (this.card.job.place as { id: string }).id === "";
    return html`<pick-list
      class="field wide"
      label="Place"
      hint="Type a town or a country"
      .text=${this.placeName}
      .fault=${fault !== undefined && !empty ? fault.message.replace(/^place\.id: /, "") : ""}
      none="No place of that name is known here. A larger town near it will do; or give coordinates."
      takesNamed
      .find=${(text: string) => this.findPlaces(text)}
      @pick=${({ detail }: CustomEvent<Found>) => set(this, "Change place", ["place"], { id: detail.id })}
    ></pick-list>`;
  }

  private async findPlaces(text: string): Promise<Found[]> {
    const found = await this.answers.placesFor(text);
    return found.map(({ id, name, country }) => ({ id, title: name, note: country }));
  }

  private byPoint(): TemplateResult {
    return html`${blank(this.card, ["place", "latitude"], "Latitude, north positive", { unit: "°", needed: true })}
    ${blank(this.card, ["place", "longitude"], "Longitude, east positive", { unit: "°", needed: true })}
    ${blank(this.card, ["place", "elev_m"], "Height", { unit: "m", standard: "nearest station’s" })}
    ${blank(this.card, ["place", "utcOffset_h"], "Clock ahead of UTC", { unit: "h", standard: "nearest place’s" })}`;
  }

  private bySky(): TemplateResult {
    return html`${blank(this.card, ["place", "latitude"], "Latitude, north positive", { unit: "°", needed: true })}
    ${choose(this.card, ["place", "sky"], "Most days are", [
      { value: "clear", label: "clear" },
      { value: "mixed", label: "sun and cloud by turns" },
      { value: "dull", label: "dull" },
    ])}`;
  }

  /** The place given another way, keeping what is known of it; what is not known is left for the field to ask. */
  private give(way: PlaceWay): void {
    const known = this.placeName === "" && "id" in this.card.job.place ? undefined : this.card.read?.place;
    const name = known?.name ?? "Our spot";
    const latitude = degrees(known?.latitude_deg);
    const longitude = degrees(known?.longitude_deg);
    const places: Record<PlaceWay, unknown> = {
      name: { id: "" },
      point: { name, latitude, longitude },
      sky: { name, latitude, sky: "mixed" },
      whole: this.card.job.place,
    };
    set(this, "Give the place another way", ["place"], places[way]);
  }

  private arrival(): TemplateResult {
    const { arrive } = this.card.job.trip;
    const [month, day] = [monthOf(arrive), dayOf(arrive)];
    const months = monthNames().map((label, i) => ({ value: String(i + 1), label, stands: arriveOn(i + 1, day) }));
    const days = Array.from({ length: daysIn(month) }, (_, i) => ({
      value: String(i + 1),
      label: String(i + 1),
      stands: arriveOn(month, i + 1),
    }));
    return html`<choice-field
        class="field month"
        label="Month"
        .keys=${["trip", "arrive"]}
        .value=${String(month)}
        .choices=${months}
      ></choice-field>
      <choice-field
        class="field short"
        label="Day"
        .keys=${["trip", "arrive"]}
        .value=${String(day)}
        .choices=${days}
      ></choice-field>`;
  }

  private driving(): TemplateResult {
    const { drives } = this.card.job.trip;
    const on = drives !== null && drives !== undefined;
    return this.extra(
      "Driving days",
      "drives",
      on,
      { everyNights: 3, hours: 3 },
      html`
        ${blank(this.card, ["trip", "drives", "everyNights"], "Drives every", { unit: "nights" })}
        ${blank(this.card, ["trip", "drives", "hours"], "For", { unit: "hours" })}
        ${blank(this.card, ["trip", "drives", "departs"], "Leaving at", { kind: "clock" })}
      `,
    );
  }

  private mains(): TemplateResult {
    const { mains } = this.card.job.trip;
    const on = mains !== null && mains !== undefined;
    return this.extra(
      "Nights on mains",
      "mains",
      on,
      { everyNights: 4, hours: 12 },
      html`
        ${blank(this.card, ["trip", "mains", "everyNights"], "Plugs in every", { unit: "nights" })}
        ${blank(this.card, ["trip", "mains", "hours"], "For", { unit: "hours" })}
        ${blank(this.card, ["trip", "mains", "from"], "From", { kind: "clock" })}
      `,
    );
  }

  private extra(
    title: string,
    key: "drives" | "mains",
    on: boolean,
    start: unknown,
    fields: TemplateResult,
  ): TemplateResult {
    return html`<fieldset class="extra">
      <legend>
        <label class="tick"
          ><input
            type="checkbox"
            .checked=${on}
            @change=${(event: Event) =>
              set(
                this,
                `${title} ${on ? "off" : "on"}`,
                ["trip", key],
                (event.target as HTMLInputElement).checked ? start : undefined,
              )}
          />${title}</label
        >
      </legend>
      ${on ? html`<div class="line">${fields}</div>` : nothing}
    </fieldset>`;
  }

  private shade(): TemplateResult {
    const shade = this.card.job.trip.shade ?? [];
    return html`<fieldset class="extra">
      <legend>
        <label class="tick"
          ><input
            type="checkbox"
            .checked=${shade.length > 0}
            @change=${(event: Event) =>
              set(
                this,
                "Change shade",
                ["trip", "shade"],
                (event.target as HTMLInputElement).checked ? [{ from: 7, to: 10, lost: 0.6 }] : undefined,
              )}
          />Shade at camp</label
        >
      </legend>
      ${shade.map(
        (_, i) =>
          html`<div class="line">
            ${blank(this.card, ["trip", "shade", i, "from"], "From", { kind: "clock" })}
            ${blank(this.card, ["trip", "shade", i, "to"], "To", { kind: "clock" })}
            ${blank(this.card, ["trip", "shade", i, "lost"], "Sun lost", { kind: "percent", unit: "%" })}
            <button
              type="button"
              class="quiet"
              aria-label="Remove shade ${i + 1}"
              @click=${() => edit(this, "Remove shade", (job) => removeAt(job, ["trip", "shade"], i))}
            >
              Remove
            </button>
          </div>`,
      )}
      ${
        shade.length === 0
          ? nothing
          : html`<button
              type="button"
              class="quiet"
              @click=${() => edit(this, "Add shade", (job) => insertAt(job, ["trip", "shade"], { from: 15, to: 17, lost: 0.6 }))}
            >
              Add more shade
            </button>`
      }
    </fieldset>`;
  }
}

const degrees = (value: number | null | undefined): number | null =>
  typeof value === "number" && Number.isFinite(value) ? Number(value.toFixed(2)) : null;
