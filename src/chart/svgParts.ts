/*
 * The few parts of SVG that a printed page needs. Lengths are in mm; every text is escaped here and nowhere
 * else.
 */

/** How a text is set. */
export interface TextStyle {
  /** height of the letters' body, mm */
  readonly size: number;
  readonly bold?: boolean;
  /** what lies at x: the middle or the end of the text; its start when left out */
  readonly anchor?: "middle" | "end";
}

/** Width of a letter in heights of its body, on the wide side for the usual typefaces without serifs. */
const LETTER = 0.56;

/** What XML 1.0 cannot hold, section 2.2: control characters and single surrogates. */
const UNFIT = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

const ENTITIES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Text that stays text within XML. */
export function escaped(text: string): string {
  return text.replace(UNFIT, "").replace(/[&<>"]/g, (sign) => ENTITIES[sign] as string);
}

/** A number as it is written in the page: to a hundredth of a millimetre. */
export function mm(value: number): string {
  return String(Number(value.toFixed(2)));
}

export function textAt(x: number, y: number, text: string, { size, bold, anchor }: TextStyle): string {
  const weight = bold === true ? ' font-weight="bold"' : "";
  const side = anchor === undefined ? "" : ` text-anchor="${anchor}"`;
  return `<text x="${mm(x)}" y="${mm(y)}" font-size="${mm(size)}"${weight}${side}>${escaped(text)}</text>`;
}

export function lineFrom(x1: number, y1: number, x2: number, y2: number, width: number): string {
  const ends = `x1="${mm(x1)}" y1="${mm(y1)}" x2="${mm(x2)}" y2="${mm(y2)}"`;
  return `<line ${ends} stroke="black" stroke-width="${mm(width)}"/>`;
}

export function rectangle(x: number, y: number, width: number, height: number, fill: string): string {
  const place = `x="${mm(x)}" y="${mm(y)}" width="${mm(width)}" height="${mm(height)}"`;
  return `<rect ${place} fill="${fill}"/>`;
}

export function dot(x: number, y: number, radius: number): string {
  return `<circle cx="${mm(x)}" cy="${mm(y)}" r="${mm(radius)}" fill="black"/>`;
}

/** About how wide a text is, mm. */
export function widthOf(text: string, size: number): number {
  return Array.from(text).length * size * LETTER;
}

/** The greatest size, up to `most`, at which so many letters fit a width. */
export function sizeFor(letters: number, width: number, most: number): number {
  return Math.min(most, width / (Math.max(1, letters) * LETTER));
}

/** A text in lines that fit a width; a word that is longer than a line is cut. */
export function wrapped(text: string, width: number, size: number): readonly string[] {
  const most = Math.max(1, Math.floor(width / (size * LETTER)));
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/).filter((each) => each !== "")) {
    const letters = Array.from(word);
    const short = letters.length > most ? `${letters.slice(0, most - 1).join("")}…` : word;
    const joined = line === "" ? short : `${line} ${short}`;
    if (line !== "" && Array.from(joined).length > most) {
      lines.push(line);
      line = short;
    } else line = joined;
  }
  return line === "" ? lines : [...lines, line];
}
