/*
 * Fields of one's own in a document.
 */

/** Whether a field is the caller's own. */
export const isOwnField = (field: string): boolean => field.startsWith("x-");

/** Fields of one's own: kept, and never read. */
export interface OwnFields {
  /** a field of one's own: kept, and never read */
  readonly [own: `x-${string}`]: unknown;
}

/**
 * A part that may have fields of one's own: its type with them, or as it is. An interface without them fits
 * too; `"x-mine" in part` tells which it is.
 */
export type MayHaveOwn<Part> = Part | (Part & OwnFields);
