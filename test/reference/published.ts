/*
 * What a published record is. The figures in this folder were copied from print (or
 * recalled, and marked so); the sentences are ours. Nothing here is read by the package: only tests stand on
 * it.
 */

/**
 * How we came by a figure. `"read"`: seen in the named source. `"from memory"`: widely reproduced, not seen
 * in print. `"from memory, uncertain"`: no test may rest on its truth. `"common practice"`: a rule of the
 * trade with no single source.
 */
export type Provenance = "read" | "from memory" | "from memory, uncertain" | "common practice";

/** One published record: what it is about, where it stands, and its rows. */
export interface Published<Row> {
  readonly id: string;
  /** author, title, year, place */
  readonly source: string;
  readonly provenance: Provenance;
  /** developer; material; conditions */
  readonly about: string;
  readonly rows: readonly Row[];
}

/** Records that no check in this folder uses, and why. */
export interface NotUsed {
  readonly ids: readonly string[];
  readonly reason: string;
}

/** Sources that several files of figures cite. */
export const IVES = "H. E. Ives, Airplane Photography, Philadelphia, 1920, ch. XXII, comparison table";
export const J78 = "Eastman Kodak, publication J-78, D-76, n.d.";
