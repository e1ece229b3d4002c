/*
 * The picture of contrast: how the gradient grows, and the time for a wanted one.
 */
import * as Plot from "@observablehq/plot";
import { formatTime, gammaAt, roundTime, timeForGamma } from "darkroom-kinetics";
import { label, sweep } from "./frame.mjs";
import { published } from "./published.mjs";

export async function growth() {
  const { growthConstants } = await published("growth");
  const wanted = 0.8;
  const looks = [{ className: "one" }, { className: "two", dash: "7 4" }];
  const developers = growthConstants.map(({ about, rows: [{ gammaInfinity, constant }] }, i) => {
    // The printed constant is in common logarithms per minute.
    const law = { gammaInfinity, ratePerS: (constant * Math.LN10) / 60, appearanceS: 0 };
    const timeS = timeForGamma(wanted, law);
    return {
      ...looks[i],
      name: about.split(" ")[0],
      gammaInfinity,
      timeS,
      rows: sweep(0, 6, 90, (x) => ({ x, gamma: gammaAt(x * 60, law) })),
    };
  });
  const shown = (timeS) => formatTime(roundTime(timeS));
  const [slow, fast] = developers;
  return {
    file: "contrast.svg",
    title: "Growth of the gradient with time of development",
    desc: `The gradient of an aerial plate rises steeply at first and levels off toward a limit: ${slow.gammaInfinity} in ${slow.name}, ${fast.gammaInfinity} in ${fast.name}. A gradient of ${wanted} is reached after ${shown(slow.timeS)} and ${shown(fast.timeS)}.`,
    headline: "Contrast: the gradient grows toward a limit",
    source: [
      "Published: limits and velocity constants of two developers, H. E. Ives, Airplane Photography, Philadelphia, 1920,",
      `ch. XXII (constants read as common logarithms per minute). Invented: a wanted gradient of ${wanted}.`,
    ],
    panels: [
      {
        marginRight: 200,
        x: { label: "Development time (min)", labelAnchor: "center", domain: [0, 6], ticks: 6 },
        y: { label: "↑ Gradient γ (density per unit of log exposure)", domain: [0, 2.3], ticks: 8 },
        marks: [
          Plot.ruleY([wanted], {
            className: "ink",
            stroke: "black",
            strokeDasharray: "1 3",
            strokeWidth: 1.5,
          }),
          ...developers.flatMap(({ rows, className, dash, timeS }) => [
            Plot.line(rows, { x: "x", y: "gamma", className, strokeWidth: 2, strokeDasharray: dash }),
            Plot.ruleX([{ x: timeS / 60 }], {
              x: "x",
              y1: 0,
              y2: wanted,
              className,
              stroke: "black",
              strokeDasharray: dash,
            }),
            Plot.dot([{ x: timeS / 60 }], {
              x: "x",
              y: () => wanted,
              r: 5,
              className: `${className}-fill`,
              fill: "black",
            }),
          ]),
          label("wanted gradient", 6, wanted, { dx: 6 }),
          label(shown(slow.timeS), slow.timeS / 60, 0.12, { dx: 6, className: "one-fill" }),
          label(shown(fast.timeS), fast.timeS / 60, 0.12, { dx: 6, className: "two-fill" }),
          label(`${slow.name}, solid`, 6, slow.rows.at(-1).gamma, { dx: 6, dy: -8, className: "one-fill" }),
          label(`limit ${slow.gammaInfinity}`, 6, slow.rows.at(-1).gamma, {
            dx: 6,
            dy: 8,
            className: "one-fill",
          }),
          label("chlorhydroquinone-", 6, fast.rows.at(-1).gamma, { dx: 6, dy: -16, className: "two-fill" }),
          label("metol, dashed", 6, fast.rows.at(-1).gamma, { dx: 6, className: "two-fill" }),
          label(`limit ${fast.gammaInfinity}`, 6, fast.rows.at(-1).gamma, {
            dx: 6,
            dy: 16,
            className: "two-fill",
          }),
        ],
      },
    ],
  };
}
