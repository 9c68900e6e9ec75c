import { html, nothing, type TemplateResult } from "lit";
import type { Card } from "./card.ts";

const ofSetup = (note: string, name: string): boolean => note.startsWith(`${name}: `);

/** What was assumed of the place and the trip: whatever does not begin with a setup's name. */
export const placeNotes = ({ read }: Card): string[] =>
  (read?.notes ?? []).filter((note) => !read!.job.setups.some(({ name }) => ofSetup(note, name)));

/** What was assumed of one setup, without its name. */
export const setupNotes = ({ read }: Card, index: number): string[] => {
  const name = read?.job.setups[index]?.name;
  if (read === null || name === undefined) return [];
  return read.notes.filter((note) => ofSetup(note, name)).map((note) => note.slice(name.length + 2));
};

export const noteList = (notes: readonly string[]): TemplateResult | typeof nothing =>
  notes.length === 0
    ? nothing
    : html`<ul class="notes">
        ${notes.map((note) => html`<li>${note.charAt(0).toUpperCase()}${note.slice(1)}</li>`)}
      </ul>`;
