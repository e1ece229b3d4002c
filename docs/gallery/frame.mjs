/*
 * The frame that every picture of the gallery hangs in: title and description for those who hear it, a headline, one or two panels drawn by
 * Observable Plot, and a line below that says where the data come from. Light on paper, dark where the reader asks for it.
 */
import * as Plot from "@observablehq/plot";
import { parseHTML } from "linkedom";

const { document } = parseHTML("<!doctype html><html><body></body></html>");
const WIDTH = 720;

/** Colours by class, so that the dark ones can take their place. Shape, dash and label say the same without any colour. */
const light = {
  paper: "#ffffff",
  ink: "#1b1b1b",
  faint: "#5a5a5a",
  one: "#0b5c94",
  two: "#a8410a",
  three: "#356b2c",
};
const dark = {
  paper: "#16181b",
  ink: "#ececec",
  faint: "#b0b0b0",
  one: "#7cc0f2",
  two: "#f4a46c",
  three: "#9ed28f",
};

const rules = ({ paper, ink, faint, one, two, three }) =>
  [
    `.paper { fill: ${paper}; }`,
    `svg { color: ${ink}; }`,
    `.headline, .label { fill: ${ink}; }`,
    `.halo { stroke: ${paper}; }`,
    `.source { fill: ${faint}; }`,
    `.ink { stroke: ${ink}; }`,
    ...Object.entries({ one, two, three }).flatMap(([name, colour]) => [
      `.${name} { stroke: ${colour}; }`,
      `.${name}-fill, .${name}-band { fill: ${colour}; }`,
    ]),
  ].join("\n");

const style = `
text { font-family: system-ui, "Segoe UI", "Helvetica Neue", Arial, "DejaVu Sans", sans-serif; font-variant: tabular-nums; }
.headline { font-size: 16px; font-weight: 600; }
.source { font-size: 12px; }
.one-band, .two-band, .three-band { fill-opacity: 0.16; stroke: none; }
.halo { stroke-width: 4px; stroke-linejoin: round; paint-order: stroke; }
${rules(light)}
@media screen and (prefers-color-scheme: dark) {
${rules(dark)}
}
`;

const escape = (text) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

/** A curve as rows for a line mark: `count` + 1 values from `from` to `to`. */
export const sweep = (from, to, count, row) =>
  Array.from({ length: count + 1 }, (_, i) => row(from + ((to - from) * i) / count));

/** A written label beside what it names: `dx`, `dy` in px, `anchor` as in SVG. */
export function label(text, x, y, { dx = 0, dy = 0, anchor = "start", className = "label" } = {}) {
  return Plot.text([{ x, y, text }], {
    x: "x",
    y: "y",
    text: "text",
    dx,
    dy,
    textAnchor: anchor,
    fontSize: 13,
    className: `${className} halo`,
    fill: "black",
    stroke: "white",
    lineAnchor: "middle",
  });
}

/**
 * One picture as the text of an SVG file.
 *
 * @param picture - `title` and `desc` for those who hear it, `headline` and `source` lines for those who see it, `panels` as options for Plot
 */
export function frame({ title, desc, headline, source, panels }) {
  let top = 44;
  const drawn = panels.map(({ height = 380, ...options }) => {
    const svg = Plot.plot({
      document,
      width: WIDTH,
      height,
      className: "plot",
      grid: true,
      marginLeft: 64,
      marginTop: 30,
      marginBottom: 46,
      marginRight: 150,
      style: { fontSize: "13px", background: "none" },
      ...options,
    });
    svg.setAttribute("y", String(top));
    top += height;
    return svg.outerHTML;
  });
  const sources = source.map(
    (line, i) => `<text class="source" x="20" y="${top + 18 + 17 * i}">${escape(line)}</text>`,
  );
  const height = top + 18 + 17 * source.length;
  const parts = [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="title desc" width="${WIDTH}" height="${height}" viewBox="0 0 ${WIDTH} ${height}">`,
    `<title id="title">${escape(title)}</title>`,
    `<desc id="desc">${escape(desc)}</desc>`,
    `<style>${style}</style>`,
    `<rect class="paper" width="${WIDTH}" height="${height}"/>`,
    `<text class="headline" x="20" y="30">${escape(headline)}</text>`,
    ...drawn,
    ...sources,
    "</svg>",
  ];
  return (
    parts
      .join("\n")
      // A hundredth of a pixel, so that the last figure of an exponential on another machine does not make another file.
      .replace(/-?\d+\.\d{3,}(?:e-?\d+)?/g, (number) => String(Math.round(Number(number) * 100) / 100 || 0))
      .replace(/(?<!\n)<(?=\/?(?:g|svg|path|line|circle|rect|text|style)\b)/g, (tag, at, whole) =>
        whole[at - 1] === undefined ? tag : `\n${tag}`,
      )
      .replace(/[ \t]+$/gm, "")
      .concat("\n")
  );
}
