/*
 * The scale of a bath: its length is the work that is done, its labels are clock times. So the goal stays in its
 * place while its time moves.
 */
import { formatTime } from "darkroom-kinetics";
import type { BathWords } from "../bathWords.js";
import { attribute, el, say } from "../dom.js";
import { clockUnit } from "../figures.js";
import type { Shown } from "../run.js";

/** Nearer than this, as a share of the length, two labels become one. */
const NEAR = 0.24;

/** The scale, and how it follows the bath. */
export interface ScaleView {
  readonly element: HTMLElement;
  update(shown: Shown, clock: string): void;
}

/** Makes the scale. */
export function scaleView(words: BathWords): ScaleView {
  const part = (name: string): HTMLElement => el("span", { class: name });
  const [now, arrow, done, band, goal, goalText, low, high] = [
    "now",
    "arrow",
    "done",
    "band",
    "goal",
    "goal-text",
    "low",
    "high",
  ].map(part) as [
    HTMLElement,
    HTMLElement,
    HTMLElement,
    HTMLElement,
    HTMLElement,
    HTMLElement,
    HTMLElement,
    HTMLElement,
  ];
  const bar = el("span", { class: "bar" }, el("span", { class: "line" }), band, done, goal, arrow);
  const element = el(
    "div",
    { class: "scale", role: "img" },
    el("span", { class: "above" }, now),
    bar,
    el("span", { class: "below" }, goalText),
    el("span", { class: "below" }, low, high),
  );
  // A label is shifted by its own share, so that it never leaves the scale.
  const place = (label: HTMLElement, share: number): void => {
    attribute(label, "style", `left:${percent(share)};transform:translateX(-${percent(share)})`);
  };
  return {
    element,
    update: ({ scale, goalS, band: { lowS, highS } }, clock) => {
      const [lowText, highText, goalClock] = [lowS, highS, goalS].map((s) => formatTime(s)) as [
        string,
        string,
        string,
      ];
      say(now, words.now(clock));
      place(now, scale.now);
      attribute(arrow, "style", `left:${percent(scale.now)}`);
      attribute(done, "style", `width:${percent(scale.now)}`);
      attribute(band, "style", `left:${percent(scale.low)};width:${percent(scale.high - scale.low)}`);
      attribute(goal, "style", `left:${percent(scale.goal)}`);
      say(goalText, goalClock);
      place(goalText, scale.goal);
      const near = scale.high - scale.low < NEAR;
      say(low, near ? words.between(lowText, highText) : lowText);
      place(low, near ? scale.goal : scale.low);
      say(high, near ? "" : highText);
      place(high, scale.high);
      attribute(
        element,
        "aria-label",
        words.scale(clock, `${goalClock} ${clockUnit(goalClock)}`, lowText, highText),
      );
    },
  };
}

const percent = (share: number): string => `${(100 * share).toFixed(2)}%`;
