import { inRange, positive, unreadable, wrongValue } from "../core/guards.js";
import type { Outcome } from "../learning/types.js";

const FORMS = '"good", "thin", "dense", "failed", "fogged", "over 1", "N-0.5" or "x1.2"';

const GOOD = new RegExp(
  "^(?:good|very good|ok|okay|right|just right|spot on|normal|fine|perfect|great|excellent|n|" +
    "(?:it )?came out (?:good|right|well))$",
);

/** Words that say how much without an amount. */
const ABOUT =
  "(?:(?:way|much|far|a|an?|bit|little|touch|tad|trifle|slightly|rather|very|quite|somewhat|too|still|" +
  String.raw`looks?|came|out|it|is|was|negatives?)\s+)*`;
const THIN = new RegExp(`^${ABOUT}(?:thin|underdeveloped|under-developed)$`);
const DENSE = new RegExp(`^${ABOUT}(?:dense|thick|overdeveloped|over-developed)$`);

/**
 * How a negative came out, in the words of a notebook: `"good"` and its like, `"failed"`, `"fogged"`; `"too
 * thin"` or `"a bit dense"`, which say no amount; steps over or under (`"over 1"`, `"N+1"`); or the right
 * time as a multiple (`"x1.2"`). A bare `"+1"` is refused with the question which is meant.
 */
export function judgement(text: string): Outcome {
  const said = text
    .toLowerCase()
    .replace(/[−–]/g, "-")
    .replace(/[.!]+$/, "")
    .trim();
  const words = said.replace(/\s+/g, " ");
  if (GOOD.test(words)) return { kind: "good" };
  if (words === "failed" || words === "fogged") return { kind: words };
  if (THIN.test(words)) return { kind: "thin" };
  if (DENSE.test(words)) return { kind: "dense" };
  const lower = said.replace(/\s/g, "");
  const [, word, sign, amount] =
    /^(?:(over|under)|n([-+]))(\d+(?:\.\d+)?)(?:steps?|stops?)?$/.exec(lower) ?? [];
  if (amount !== undefined) {
    const steps = Number(amount) * (word === "under" || sign === "-" ? -1 : 1);
    return { kind: "steps", steps: inRange("", steps, -10, 10) };
  }
  const bare = /^([-+])(\d+(?:\.\d+)?)(?:steps?|stops?)?$/.exec(lower)?.[2];
  if (bare !== undefined) {
    const readings = [`over ${bare}`, `under ${bare}`];
    wrongValue(
      "",
      `"over ${bare}" if it came out too dense, or "under ${bare}" if it needed more`,
      text,
      { readings },
      "ambiguous",
    );
  }
  const ratio = /^[x\u00d7](\d+(?:\.\d+)?)$/.exec(lower)?.[1];
  if (ratio === undefined) unreadable("", "outcome", ["good", "thin", "N-0.5", "x1.2"], FORMS, text);
  return { kind: "judged", timeRatio: positive("", Number(ratio), 100) };
}
