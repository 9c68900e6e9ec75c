/** How far to trust a row: the same words as the reference checks use, and one more for demonstration figures. */
export type Standing =
  | "published"
  | "own computation from the published equation"
  | "from memory"
  | "common practice, no source"
  | "invented for demonstration";

/** What every row of every table carries. */
export interface Row {
  /** unique within its table */
  readonly id: string;
  readonly name: string;
  /** where the figures come from */
  readonly source: string;
  readonly standing: Standing;
}
