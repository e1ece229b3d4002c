/*
 * The colours and the few shapes of a picture. A colour is a class with a CSS custom property behind it; the
 * attribute beside the class serves programs that know no custom properties.
 */
import { escaped, short } from "./svgParts.js";

/** What a colour is for. */
export type Ink = "ink" | "quiet" | "today" | "grid" | "paper";

/** The colours of a picture that is a file of its own, for paper and light screens, and for dark ones. */
const LIGHT: Readonly<Record<Ink, string>> = {
  ink: "#1b1b1b",
  quiet: "#565656",
  today: "#124e78",
  grid: "#cfcbc3",
  paper: "#ffffff",
};
const DARK: Readonly<Record<Ink, string>> = {
  ink: "#ececec",
  quiet: "#b4b4b4",
  today: "#8cc8f2",
  grid: "#43474d",
  paper: "#16181b",
};
const PRINT: Readonly<Record<Ink, string>> = {
  ink: "#000000",
  quiet: "#333333",
  today: "#000000",
  grid: "#bbbbbb",
  paper: "#ffffff",
};

/** Within a page that names no colours. */
const INHERITED: Readonly<Record<Ink, string>> = {
  ink: "currentColor",
  quiet: "currentColor",
  today: "currentColor",
  grid: "color-mix(in srgb,currentColor 22%,transparent)",
  paper: "Canvas",
};

const INKS = Object.keys(LIGHT) as readonly Ink[];

/** The style of a picture; every rule begins with the class of the picture. */
export function styleOf(prefix: string, standalone: boolean): string {
  const root = `.${prefix}`;
  const rules = INKS.flatMap((ink) => {
    const value = `var(--picture-${ink},${INHERITED[ink]})`;
    return [`${root} .fill-${ink}{fill:${value}}`, `${root} .line-${ink}{stroke:${value}}`];
  });
  const colours = (own: Readonly<Record<Ink, string>>): string =>
    `${root}{${INKS.map((ink) => `--picture-${ink}:${own[ink]}`).join(";")}}`;
  return [
    `${root} text{font-variant-numeric:tabular-nums}`,
    `${root} .halo{paint-order:stroke;stroke-width:4px;stroke-linejoin:round}`,
    ...rules,
    ...(standalone
      ? [
          colours(LIGHT),
          `@media screen and (prefers-color-scheme:dark){${colours(DARK)}}`,
          `@media print{${colours(PRINT)}}`,
        ]
      : []),
  ].join("\n");
}

/** A fill, as class and attribute. */
export function fill(ink: Ink): string {
  return `class="fill-${ink}" fill="${LIGHT[ink]}"`;
}

/** A line with its width, and perhaps its dashes. */
export function line(ink: Ink, width: number, dashes?: string): string {
  const dashed = dashes === undefined ? "" : ` stroke-dasharray="${dashes}"`;
  return `class="line-${ink}" fill="none" stroke="${LIGHT[ink]}" stroke-width="${width}"${dashed}`;
}

/** A line filled with paper. */
export function hollow(ink: Ink, width: number): string {
  const colours = `fill="${LIGHT.paper}" stroke="${LIGHT[ink]}"`;
  return `class="fill-paper line-${ink}" ${colours} stroke-width="${width}"`;
}

/** How a text is set. */
export interface Lettering {
  readonly size: number;
  readonly ink: Ink;
  readonly bold?: boolean;
  readonly anchor?: "start" | "middle" | "end";
}

/** A text on a halo of paper, so that no line runs through it. */
export function words(x: number, y: number, text: string, { size, ink, bold, anchor }: Lettering): string {
  const weight = bold === true ? ' font-weight="600"' : "";
  const side = anchor === undefined || anchor === "start" ? "" : ` text-anchor="${anchor}"`;
  return (
    `<text x="${short(x)}" y="${short(y)}" font-size="${short(size)}"${weight}${side} ` +
    `class="halo fill-${ink} line-paper" fill="${LIGHT[ink]}">${escaped(text)}</text>`
  );
}

/** A straight line. */
export function straight(x1: number, y1: number, x2: number, y2: number, paint: string): string {
  return `<line x1="${short(x1)}" y1="${short(y1)}" x2="${short(x2)}" y2="${short(y2)}" ${paint}/>`;
}

/** A line or an outline through points; `closed` joins its ends. */
export function through(
  points: readonly (readonly [number, number])[],
  paint: string,
  closed = false,
): string {
  const [first = [0, 0], ...others] = points.map(([x, y]) => [short(x), short(y)]);
  const rest = others.map(([x, y]) => `L${x} ${y}`).join("");
  return `<path d="M${first[0]} ${first[1]}${rest}${closed ? "Z" : ""}" ${paint}/>`;
}

/** A disc or a ring. */
export function round(x: number, y: number, radius: number, paint: string): string {
  return `<circle cx="${short(x)}" cy="${short(y)}" r="${short(radius)}" ${paint}/>`;
}

/** A rectangle. */
export function box(x: number, y: number, width: number, height: number, paint: string): string {
  const place = `x="${short(x)}" y="${short(y)}" width="${short(width)}" height="${short(height)}"`;
  return `<rect ${place}${paint === "" ? "" : ` ${paint}`}/>`;
}

/** A ring filled with paper. */
export function ring(x: number, y: number, radius: number): string {
  return round(x, y, radius, hollow("ink", 2.5));
}

/** A whisker from low to high. */
export function whisker(low: number, high: number, y: number): string {
  return `<path d="M${short(low)} ${short(y - 4)}v8m0 -4H${short(high)}m0 -4v8" ${line("ink", 1.4)}/>`;
}

/** A text with a small and quiet second part. The typeface at hand sets where the second begins. */
export function phrase(
  x: number,
  y: number,
  first: string,
  second: string,
  style: Lettering,
  size: number,
): string {
  const whole = words(x, y, first, style);
  if (second === "") return whole;
  const quiet = `font-size="${short(size)}" font-weight="400" class="fill-quiet" fill="${LIGHT.quiet}"`;
  return whole.replace(/<\/text>$/, `<tspan dx="10" ${quiet}>${escaped(second)}</tspan></text>`);
}
