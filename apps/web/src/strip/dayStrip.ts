import { quarter, stripGeometry } from "@stayput/charts";
import { html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { LightElement } from "../fields/lightElement.ts";
import { clockText } from "../fields/typed.ts";
import { styled } from "./styled.ts";
import { endingAt, endOf, freeHour, isWindow, lengthOf, moved, startingAt, startOf, type StripUse } from "./uses.ts";

type Grip = "start" | "body" | "end";

interface Drag {
  readonly index: number;
  readonly grip: Grip;
  readonly from_h: number;
  readonly before: readonly StripUse[];
  /** made by this drag, and not yet kept */
  readonly fresh: boolean;
  readonly x_px: number;
  moved: boolean;
}

/** hours drawn at their true length, but never too thin to take hold of */
const thinnest_h = 0.5;

/**
 * The 24 hours of a load, and the control for when it runs. Drag an end, drag a bar, drag on bare strip to make one;
 * arrows move by quarter hours and with shift by hours, Delete takes away, Enter on the strip adds. To a screen reader each
 * bar is three sliders: when it starts, the whole of it, when it ends. Dispatches `uses` with the new list, `done` at the
 * end of a drag.
 */
@customElement("day-strip")
export class DayStrip extends LightElement {
  @property() label = "";
  @property({ attribute: false }) uses: readonly StripUse[] = [];
  @property({ attribute: false }) dark: { readonly from_h: number; readonly to_h: number } | null = null;
  @state() private drag: Drag | null = null;

  private readonly scale = stripGeometry(0, 100);

  protected override render(): TemplateResult {
    return html`<div class="strip" role="group" aria-label="${this.label}: when it runs, over 24 hours">
      <div
        class="track"
        @pointerdown=${this.down}
        @pointermove=${this.move}
        @pointerup=${this.up}
        @pointercancel=${this.cancel}
      >
        ${this.night()}${hourMarks}${this.uses.map((use, i) => this.bar(use, i))}
      </div>
      <button type="button" class="add" aria-label="Add hours to ${this.label}" title="Add hours" @click=${this.add}>
        +
      </button>
    </div>`;
  }

  private night(): unknown {
    if (this.dark === null) return nothing;
    const { from_h, to_h } = this.dark;
    return this.scale
      .pieces(from_h, to_h)
      .map(({ x, width }) => html`<span class="dark" ${styled(`left:${x}%;width:${width}%`)}></span>`);
  }

  private bar(use: StripUse, index: number): TemplateResult {
    const pieces = piecesOf(use);
    const part = isWindow(use) && use.duty !== undefined && use.duty < 1;
    const [first, last] = [pieces[0]!, pieces.at(-1)!];
    const ends = isWindow(use) && lengthOf(use) < 24;
    const look = `bar ${part ? "duty" : ""} ${this.drag?.index === index ? "held" : ""}`;
    return html`<span
        class=${look}
        data-index=${index}
        data-grip="body"
        role="slider"
        tabindex="0"
        aria-label="${this.label}, hours ${index + 1}, move"
        aria-valuemin="0"
        aria-valuemax="24"
        aria-valuenow=${startOf(use)}
        aria-valuetext=${this.spoken(use)}
        ${styled(placed(first))}
        @keydown=${(event: KeyboardEvent) => this.key(event, index, "body")}
      ></span
      >${
        last === first
          ? nothing
          : html`<span
              class=${look}
              data-index=${index}
              data-grip="body"
              aria-hidden="true"
              ${styled(placed(last))}
            ></span>`
      }${ends ? html`${this.handle(use, index, "start", first)}${this.handle(use, index, "end", last)}` : nothing}`;
  }

  private handle(use: StripUse, index: number, grip: "start" | "end", piece: Piece): TemplateResult {
    const hour = grip === "start" ? startOf(use) : endOf(use);
    return html`<span
      class="grip ${grip}"
      data-index=${index}
      data-grip=${grip}
      role="slider"
      tabindex="0"
      aria-label="${this.label}, hours ${index + 1}, ${grip === "start" ? "from" : "until"}"
      aria-valuemin="0"
      aria-valuemax="24"
      aria-valuenow=${hour}
      aria-valuetext=${clockText(hour)}
      ${styled(placed(piece))}
      @keydown=${(event: KeyboardEvent) => this.key(event, index, grip)}
    ></span>`;
  }

  private spoken(use: StripUse): string {
    if (!isWindow(use)) return `${clockText(use.at)}, ${use.minutes} minutes`;
    return lengthOf(use) >= 24 ? "all day" : `${clockText(use.from)} to ${clockText(use.to)}`;
  }

  private tell(uses: readonly StripUse[]): void {
    this.dispatchEvent(new CustomEvent("uses", { detail: uses }));
  }
  private put(index: number, use: StripUse): void {
    this.tell(this.uses.map((each, i) => (i === index ? use : each)));
  }
  private done(): void {
    this.dispatchEvent(new CustomEvent("done"));
  }

  private async add(): Promise<void> {
    this.tell([...this.uses, freeHour(this.uses)]);
    this.done();
    await this.updateComplete;
    await new Promise(requestAnimationFrame);
    this.renderRoot.querySelector<HTMLElement>(`.bar[data-index="${this.uses.length - 1}"]`)?.focus();
  }

  private key(event: KeyboardEvent, index: number, grip: Grip): void {
    const use = this.uses[index];
    if (use === undefined) return;
    const step = event.shiftKey ? 1 : 0.25;
    const by = { ArrowLeft: -step, ArrowDown: -step, ArrowRight: step, ArrowUp: step, PageDown: -1, PageUp: 1 }[
      event.key
    ];
    if (by !== undefined) {
      event.preventDefault();
      this.put(index, this.shifted(use, grip, by));
    } else if (event.key === "Delete" || event.key === "Backspace") {
      event.preventDefault();
      this.tell(this.uses.filter((_, i) => i !== index));
      this.done();
      this.renderRoot.querySelector<HTMLElement>(".add")?.focus();
    } else if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      void this.add();
    }
  }

  private shifted(use: StripUse, grip: Grip, by_h: number): StripUse {
    if (grip === "body" || !isWindow(use)) return moved(use, by_h);
    return grip === "start" ? startingAt(use, use.from + by_h) : endingAt(use, use.to + by_h);
  }

  private hourUnder(event: PointerEvent): number {
    const { left, width } = this.track.getBoundingClientRect();
    return stripGeometry(left, width).hourAt(event.clientX);
  }
  private get track(): HTMLElement {
    return this.renderRoot.querySelector<HTMLElement>(".track")!;
  }

  private down(event: PointerEvent): void {
    if (event.button !== 0) return;
    const target = event.target as HTMLElement;
    const hour = this.hourUnder(event);
    const grip = target.dataset["grip"] as Grip | undefined;
    const index = grip === undefined ? this.uses.length : Number(target.dataset["index"]);
    this.drag = {
      index,
      grip: grip ?? "end",
      from_h: Math.min(hour, 23.75),
      before: this.uses,
      fresh: grip === undefined,
      x_px: event.clientX,
      moved: false,
    };
    this.track.setPointerCapture(event.pointerId);
    if (grip !== undefined) target.focus({ preventScroll: true });
    event.preventDefault();
  }

  private move(event: PointerEvent): void {
    const { drag } = this;
    if (drag === null || (!drag.moved && Math.abs(event.clientX - drag.x_px) < 4)) return;
    drag.moved = true;
    const hour = this.hourUnder(event);
    if (drag.fresh) {
      this.tell([...drag.before, drawnOut(drag.from_h, hour)]);
      return;
    }
    const use = drag.before[drag.index];
    if (use !== undefined) this.put(drag.index, dragged(use, drag, hour));
  }

  private up(): void {
    const { drag } = this;
    if (drag === null) return;
    this.drag = null;
    if (drag.fresh && !drag.moved)
      this.tell([...drag.before, { from: drag.from_h, to: Math.min(24, drag.from_h + 1) }]);
    this.done();
  }

  /** The page took the touch to scroll: nothing was meant. */
  private cancel(): void {
    const { drag } = this;
    this.drag = null;
    if (drag?.moved === true) this.tell(drag.before);
    this.done();
  }
}

/** A stretch of the strip, in hours. */
type Piece = readonly [from_h: number, to_h: number];

/** One piece, or two where it runs past midnight: the evening's first. */
function piecesOf(use: StripUse): Piece[] {
  const start = startOf(use);
  const end = start + Math.max(lengthOf(use), thinnest_h);
  return end > 24
    ? [
        [start, 24],
        [0, end - 24],
      ]
    : [[start, end]];
}

/** The style sheet makes places of these, with room for a finger. */
const placed = ([from_h, to_h]: Piece): string => `--from:${(from_h / 24) * 100};--to:${(to_h / 24) * 100}`;

function dragged(use: StripUse, { grip, from_h }: Drag, hour: number): StripUse {
  if (grip === "body" || !isWindow(use)) return moved(use, quarter(hour - from_h));
  return grip === "start" ? startingAt(use, Math.min(hour, 23.75)) : endingAt(use, hour);
}

/** From where the pointer went down to where it is, either way. */
function drawnOut(a: number, b: number): StripUse {
  const [from, to] = a < b ? [a, b] : [b, a];
  return { from, to: Math.max(to, from + 0.25) };
}

const hours = Array.from({ length: 23 }, (_, i) => i + 1);
const hourMarks = html`${hours.map(
  (hour) =>
    html`<span class="mark ${hour % 6 === 0 ? "six" : ""}" ${styled(`left:${(hour / 24) * 100}%`)}
      >${hour % 6 === 0 ? html`<i>${String(hour).padStart(2, "0")}</i>` : nothing}</span
    >`,
)}`;
