/*
 * How wide words are, in the unit of their size: on the wide side for the usual typefaces without serifs.
 */

/** Widths of letters in heights of their body, after DejaVu Sans, which is wider than most. */
const NARROW = 0.36;
const USUAL = 0.62;
const WIDE = 0.82;
const NARROW_LETTERS = /[ijlftr.,:;'!|() °]/;
const WIDE_LETTERS = /[mwMW%@]/;

/** About how wide a text is. */
export function textWidth(text: string, size: number): number {
  let width = 0;
  for (const letter of text)
    width += NARROW_LETTERS.test(letter) ? NARROW : WIDE_LETTERS.test(letter) ? WIDE : USUAL;
  return width * size;
}

/** A text in lines that fit a width; a word that is longer than a line is cut. */
export function linesThatFit(text: string, width: number, size: number): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const whole of text.split(" ")) {
    const word = cut(whole, width, size);
    const joined = line === "" ? word : `${line} ${word}`;
    if (line !== "" && textWidth(joined, size) > width) {
      lines.push(line);
      line = word;
    } else line = joined;
  }
  return [...lines, line];
}

/** As much of a word as fits a width. */
function cut(word: string, width: number, size: number): string {
  if (textWidth(word, size) <= width) return word;
  const letters = Array.from(word);
  while (letters.length > 1 && textWidth(`${letters.join("")}…`, size) > width) letters.pop();
  return `${letters.join("")}…`;
}

/** The widest of some texts. */
export function widest(texts: readonly string[]): string {
  return texts.reduce((most, text) => (textWidth(text, 1) > textWidth(most, 1) ? text : most), "");
}

/** The size at which a text fits a width, at most `most`. */
export function sizeThatFits(text: string, width: number, most: number): number {
  return Math.min(most, width / Math.max(1, textWidth(text, 1)));
}

/** A place that is taken. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where a text may be set: its start, middle or end at x, its foot at y. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly anchor: "start" | "middle" | "end";
}

/** The box of a text at a place. */
export function boxOf(text: string, size: number, { x, y, anchor }: Place): Box {
  const width = textWidth(text, size);
  const left = anchor === "start" ? x : anchor === "end" ? x - width : x - width / 2;
  return { left, right: left + width, top: y - 0.8 * size, bottom: y + 0.25 * size };
}

/** Whether two places overlap. */
export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
