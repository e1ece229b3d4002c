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

/** What XML 1.0 cannot hold, section 2.2: control characters and single surrogates. */
const UNFIT = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

const ENTITIES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Text that stays text within XML. */
export function escaped(text: string): string {
  return text.replace(UNFIT, "").replace(/[&<>"]/g, (sign) => ENTITIES[sign] as string);
}

/** A place or a length as it is written: to a hundredth. */
export function short(value: number): string {
  return String(Number(value.toFixed(2)));
}

export function textAt(x: number, y: number, text: string, { size, bold, anchor }: TextStyle): string {
  const weight = bold === true ? ' font-weight="bold"' : "";
  const side = anchor === undefined ? "" : ` text-anchor="${anchor}"`;
  const place = `x="${short(x)}" y="${short(y)}" font-size="${short(size)}"`;
  return `<text ${place}${weight}${side}>${escaped(text)}</text>`;
}

export function lineFrom(x1: number, y1: number, x2: number, y2: number, width: number): string {
  const ends = `x1="${short(x1)}" y1="${short(y1)}" x2="${short(x2)}" y2="${short(y2)}"`;
  return `<line ${ends} stroke="black" stroke-width="${short(width)}"/>`;
}

export function rectangle(x: number, y: number, width: number, height: number, fill: string): string {
  const place = `x="${short(x)}" y="${short(y)}" width="${short(width)}" height="${short(height)}"`;
  return `<rect ${place} fill="${fill}"/>`;
}

export function dot(x: number, y: number, radius: number): string {
  return `<circle cx="${short(x)}" cy="${short(y)}" r="${short(radius)}" fill="black"/>`;
}
