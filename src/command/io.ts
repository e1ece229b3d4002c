/*
 * What the command needs from the machine it runs on, so that it can be run without one.
 */

/** Files, two streams of text and a clock. */
export interface Io {
  /** the version of the package */
  readonly version: string;
  /** the text of a file, or of standard input for "-"; throws what the system says */
  readonly read: (path: string) => string;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** ms from any start */
  readonly nowMs: () => number;
  /** whether somebody watches what `err` writes */
  readonly watched: boolean;
}

/** The exit codes, from the best to the worst. */
export const EXIT = { fine: 0, unwise: 1, wrongFile: 2, wrongUse: 3 } as const;
