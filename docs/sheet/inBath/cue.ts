/* What there is to do, in large words, and the seconds to the next. */
import type { PlanCue } from "darkroom-kinetics";
import { el, say } from "../dom.js";
import type { Shown } from "../run.js";
import { left, type Control } from "./control.js";
import { cueText } from "./said.js";
import { buzz, patternOf, sound } from "./signal.js";

/** The running cue. */
export interface CuePart {
  readonly element: HTMLElement;
  /** brings the eyes and the reading-out here */
  focus(): void;
  update(shown: Shown): void;
}

/** Makes the running cue. */
export function cuePart({ store, words, bath }: Control): CuePart {
  const name = el("p", { class: "bath-name" });
  const moments = el("p", { class: "moments" });
  const cue = el("p", { class: "cue", id: "cue", tabindex: -1 });
  const next = el("p", { class: "next" });
  // Only what begins is read aloud, not the seconds.
  const spoken = el("p", { class: "unseen", role: "status" });
  let told: string | undefined;

  const tell = (first: PlanCue | undefined, text: string): void => {
    const id = first === undefined ? "" : `${first.do} ${first.atS}`;
    if (id === told) return;
    // What ran already when the page was opened is not called out again.
    const begins = told !== undefined;
    told = id;
    say(spoken, text);
    if (first === undefined || !begins) return;
    if (bath().sound) sound(patternOf(first));
    if (bath().buzz) buzz(patternOf(first));
  };

  return {
    element: el("div", { class: "running-cue" }, name, moments, cue, next, spoken),
    focus: () => {
      cue.focus({ preventScroll: true });
    },
    update: (shown) => {
      const { phase, step, plan, cue: now, next: then } = shown;
      const said = (one: PlanCue): string => cueText(one, step.name, plan, store.sheet);
      const text = now === undefined ? (phase === "over" ? words.over : words.still) : said(now);
      say(name, phase === "after" ? words.bathFor(words.steps[step.name], left(shown.stepLeftS)) : "");
      const begun = shown.moments.map(said);
      say(moments, begun.join(" "));
      say(cue, text);
      // Where one thing follows the other at once, the seconds are said once.
      const apart = Math.abs(shown.cueLeftS - shown.nextInS) > 1;
      const lasts = now !== undefined && now.do !== "pour-out" && (apart || then === undefined);
      say(
        next,
        [
          ...(lasts ? [words.left(left(shown.cueLeftS))] : []),
          ...(then === undefined || now?.do === "pour-out"
            ? []
            : [words.inTime(left(shown.nextInS), said(then))]),
        ].join("; "),
      );
      tell(shown.moments.at(-1) ?? now, [...begun, text].join(" "));
    },
  };
}
