import type { Caution } from "../core/caution.js";
import type { AnyCause } from "../core/cause.js";
import type { TimeEstimate } from "../core/estimate.js";
import { unreadFields } from "../core/pointer.js";
import type { Factor } from "../core/term.js";
import type { Baseline, Conditions, Knowledge } from "./types.js";

/** The shortest time that develops evenly, s: five minutes (makers' notes on tanks, common practice). */
const SHORTEST_S = 300;

/** The longest time that is still usable, s: two hours, beyond stand development (common practice). */
const LONGEST_S = 7200;

/** A known time below this was perhaps meant in minutes, s. */
const MINUTES_BELOW_S = 60;

/** From this ratio of its ends on, an interval is wide. */
const WIDE = 1.5;

const OWN_BASELINE_FIELDS = ["timeS", "logSd", "runs", "sources", "hydroquinone", "emulsion"];
/** What learned knowledge holds besides its laws. */
const LEARNED_FIELDS = ["schema", "prior", "runs", "baseline", "parameters", "scatter", "setAside", "advice"];

/** The cautions about the answer as a whole: its length, its width, what it rests on, and fields that are not read. */
export function outcomeCautions(
  { timeS, lowS, highS }: TimeEstimate,
  factors: readonly Factor[],
  baseline: Baseline,
  knowledge: Knowledge,
  together: boolean,
): readonly Caution[] {
  const cautions: Caution[] = [];
  const warn = (
    code: string,
    message: string,
    quantity: "timeS" | "ratio",
    limit: number,
    actual: number,
  ): void => {
    cautions.push({ code, severity: "warn", message, quantity, limit, actual });
  };
  if (timeS < SHORTEST_S)
    warn(
      "short-time",
      "Under five minutes development gets uneven: cool or dilute the bath.",
      "timeS",
      SHORTEST_S,
      timeS,
    );
  if (timeS > LONGEST_S)
    warn("long-time", "Over two hours is too long: warm or strengthen the bath.", "timeS", LONGEST_S, timeS);
  if (highS > WIDE * lowS)
    warn(
      "wide-interval",
      "The interval is wide: develop a test strip before the negative.",
      "ratio",
      WIDE,
      highS / lowS,
    );
  const guessed = factors
    .filter(({ cause, basis }) => basis === "default" && cause !== "baseline")
    .map(({ cause }) => cause);
  if (guessed.length > 0)
    cautions.push({
      code: "default-law",
      severity: "note",
      message: `No data of your own for ${guessed.join(", ")}. A generic law with a wide spread is used.`,
      data: { causes: guessed },
    });
  if (baseline.timeS < MINUTES_BELOW_S)
    cautions.push({
      code: "maybe-minutes",
      severity: "warn",
      message: "The known time is below a minute. Is it in minutes?",
      path: "/baseline/timeS",
      quantity: "timeS",
      limit: MINUTES_BELOW_S,
      actual: baseline.timeS,
    });
  if (knowledge.joint !== undefined && !together)
    cautions.push({
      code: "other-baseline",
      severity: "note",
      message: "The baseline is not the learned one. The correlations of what was learned are left out.",
      path: "/baseline",
    });
  return cautions;
}

/** A caution for each field of the arguments that is not read. */
export function unreadCautions(
  causes: readonly AnyCause[],
  baseline: Baseline,
  conditions: Conditions,
  knowledge: Knowledge,
): readonly Caution[] {
  const fields = causes.map(({ field }) => field);
  const known = causes.filter(({ relative }) => relative !== true).map(({ field }) => field);
  const laws = causes.map(({ law }) => law);
  return [
    ...unreadFields("/baseline", baseline, [...known, ...OWN_BASELINE_FIELDS]),
    ...unreadFields("/conditions", conditions, fields),
    ...unreadFields("/knowledge", knowledge, [
      ...laws,
      "joint",
      ...("schema" in knowledge ? LEARNED_FIELDS : []),
    ]),
  ];
}
