import type { SVGTemplateResult } from "lit";

/** How a chart is drawn. */
export interface ChartOptions {
  /** width of the picture [px]; drawn no narrower than 240 */
  readonly width_px: number;
  /** height asked for [px]; a picture whose rows or labels need more is drawn taller */
  readonly height_px: number;
  /** writes watt-hours, days, volts, … ; by default the locale's own digits, rounded to what the figure is worth */
  readonly format?: ((value: number) => string) | undefined;
  /** BCP 47 tag for digits, percent and month names; "en" when left out */
  readonly locale?: string | undefined;
  /** start of the ids inside the picture; set it where two of one kind stand in the same document or shadow root */
  readonly id?: string | undefined;
  /** position, as `geometry.positionAt` gives it, to rule a read-out line at */
  readonly at?: number | null | undefined;
}

/** The facts of a chart for the data table behind it; every cell is ready to print. */
export interface ChartTable {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Values at one position, for hover and for the keyboard. */
export interface Readout {
  readonly heading: string;
  readonly lines: readonly { readonly name: string; readonly value: string }[];
}

/** Where things are, so that the page can turn a pointer or an arrow key into a position. */
export interface ChartGeometry {
  readonly width_px: number;
  /** the height drawn, which may be more than was asked */
  readonly height_px: number;
  readonly plot: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
  /** nearest position to a point in picture pixels */
  readonly positionAt: (x_px: number, y_px: number) => number;
  /** the positions arrow keys step through, rising */
  readonly stops: readonly number[];
}

/** How its facts are written; as in `ChartOptions`. */
export interface FactOptions {
  readonly locale?: string | undefined;
  /** as in `ChartOptions` */
  readonly format?: ((value: number) => string) | undefined;
}

/** One kind of picture with everything the page needs of it. */
export interface Picture<Data> {
  readonly kind: string;
  /** draws it */
  readonly chart: (data: Data, options: ChartOptions) => SVGTemplateResult;
  /** the same facts as a table */
  readonly table: (data: Data, options?: FactOptions) => ChartTable;
  /** the same facts in a sentence or two */
  readonly summary: (data: Data, options?: FactOptions) => string;
  /** the values at a position that `geometry` gave */
  readonly readout: (data: Data, position: number, options?: FactOptions) => Readout;
  /** where things stand in it */
  readonly geometry: (data: Data, options: ChartOptions) => ChartGeometry;
}
