/*
 * What a picture of the gallery shows, read back from its SVG: the marks of each panel in the units of its axes.
 */
import { DOMParser } from "linkedom";

/** An element of a parsed SVG, as far as it is looked at. */
interface Drawn {
  readonly localName: string;
  readonly textContent: string;
  getAttribute(name: string): string | null;
  querySelectorAll(selector: string): Iterable<Drawn>;
}

/** A place in the units of the axes. */
export type Place = readonly [x: number, y: number];

/** The marks of a panel. */
export interface Panel {
  /** dots of any shape, by the class of their mark */
  readonly dots: readonly { readonly className: string; readonly shape: string; readonly place: Place }[];
  /** the points of each line */
  readonly lines: readonly (readonly Place[])[];
  /** both ends of each rule */
  readonly rules: readonly (readonly [Place, Place])[];
  /** the left and right end of each bar, by its name */
  readonly bars: readonly { readonly name: string; readonly from: number; readonly to: number }[];
}

/** The description of a picture and its panels. */
export function plotted(svg: string): { readonly said: string; readonly panels: readonly Panel[] } {
  const root = new DOMParser().parseFromString(svg, "text/xml") as unknown as Drawn;
  const [desc] = [...root.querySelectorAll("desc")];
  return {
    said: desc?.textContent ?? "",
    panels: [...root.querySelectorAll("svg.plot")].map((panel) => panelOf(panel)),
  };
}

const numbers = (text: string): readonly number[] => (text.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);
const groups = (panel: Drawn, label: string): readonly Drawn[] => [
  ...panel.querySelectorAll(`g[aria-label="${label}"]`),
];

function panelOf(panel: Drawn): Panel {
  const x = scaleOf(panel, "x");
  const y = scaleOf(panel, "y");
  const place = (px: number, py: number): Place => [x.at(px), y.at(py)];
  return {
    dots: groups(panel, "dot").flatMap((group) =>
      [...group.querySelectorAll("circle, path")].map((mark) => {
        const circle = mark.localName === "circle";
        const [px = 0, py = 0] = circle
          ? [Number(mark.getAttribute("cx")), Number(mark.getAttribute("cy"))]
          : numbers(mark.getAttribute("transform") ?? "");
        const shape = circle ? "circle" : (mark.getAttribute("d") ?? "");
        return { className: group.getAttribute("class") ?? "", shape, place: place(px, py) };
      }),
    ),
    lines: groups(panel, "line").flatMap((group) =>
      [...group.querySelectorAll("path")].map((path) =>
        (path.getAttribute("d") ?? "")
          .slice(1)
          .split("L")
          .map((pair) => place(...(numbers(pair) as unknown as [number, number]))),
      ),
    ),
    rules: groups(panel, "rule").flatMap((group) =>
      [...group.querySelectorAll("line")].map((rule): readonly [Place, Place] => {
        const [x1, y1, x2, y2] = ["x1", "y1", "x2", "y2"].map((name) => Number(rule.getAttribute(name)));
        return [place(x1!, y1!), place(x2!, y2!)];
      }),
    ),
    bars: groups(panel, "bar").flatMap((group) =>
      [...group.querySelectorAll("rect")].map((bar, i) => {
        const left = Number(bar.getAttribute("x"));
        return {
          name: y.names[i] ?? "",
          from: x.at(left),
          to: x.at(left + Number(bar.getAttribute("width"))),
        };
      }),
    ),
  };
}

/** A scale from its ticks: even or logarithmic, whichever they fit. */
function scaleOf(panel: Drawn, axis: "x" | "y"): { at: (px: number) => number; names: readonly string[] } {
  const ticks = groups(panel, `${axis}-axis tick label`).flatMap((group) =>
    [...group.querySelectorAll("text")].map((text) => {
      const pair = numbers(text.getAttribute("transform") ?? "");
      return { px: pair[axis === "x" ? 0 : 1] ?? 0, name: text.textContent.trim() };
    }),
  );
  const names = ticks.map(({ name }) => name);
  const values = names.map((name) => Number(name.replace(/^±|[\s%]/g, "")));
  if (values.length < 2 || values.some((value) => Number.isNaN(value))) return { at: () => NaN, names };
  const pixels = ticks.map(({ px }) => px);
  const last = values.length - 1;
  const even = (of: (value: number) => number): number =>
    Math.max(
      ...values.map((value, i) => {
        const share = (of(value) - of(values[0]!)) / (of(values[last]!) - of(values[0]!));
        return Math.abs(pixels[0]! + share * (pixels[last]! - pixels[0]!) - pixels[i]!);
      }),
    );
  const log = values.every((value) => value > 0) && even(Math.log) < even((value) => value);
  const [to, from] = log ? [Math.log, Math.exp] : [(one: number) => one, (one: number) => one];
  const [low, high] = [to(values[0]!), to(values[last]!)];
  return { at: (px) => from(low + ((high - low) * (px - pixels[0]!)) / (pixels[last]! - pixels[0]!)), names };
}
