import type { Caution } from "../core/caution.js";
import type { TimeEstimate } from "../core/estimate.js";
import type { Factor } from "../core/term.js";
import type { Baseline, Conditions, Knowledge } from "./types.js";

/** The shortest time that develops evenly, s: five minutes (makers' notes on tanks, common practice). */
const SHORTEST_S = 300;

/** The longest time that is still usable, s: two hours, beyond stand development (common practice). */
const LONGEST_S = 7200;

const SHARED_FIELDS = ["temperatureC", "dilution", "agitation", "usedCm2PerL", "ageH", "gamma"];
const BASELINE_FIELDS = [...SHARED_FIELDS, "timeS", "logSd", "runs", "hydroquinone", "emulsion"];
const CONDITION_FIELDS = [...SHARED_FIELDS, "strength"];
/** The laws that knowledge may hold, and what hangs them together. */
export const LAWS: readonly string[] = [
  "temperature",
  "dilution",
  "agitation",
  "use",
  "age",
  "growth",
  "joint",
];

/**
 * Adds the cautions about the answer as a whole: its length, its width, what it rests on, and fields that
 * nobody read.
 */
export function outcomeCautions(
  cautions: Caution[],
  estimate: TimeEstimate,
  factors: readonly Factor[],
  baseline: Baseline,
  conditions: Conditions,
  knowledge: Knowledge,
): void {
  const { timeS, lowS, highS } = estimate;
  if (timeS < SHORTEST_S)
    cautions.push(
      unwise(
        "short-time",
        "Under five minutes development gets uneven: cool or dilute the bath.",
        SHORTEST_S,
        timeS,
      ),
    );
  if (timeS > LONGEST_S)
    cautions.push(
      unwise("long-time", "Over two hours is too long: warm or strengthen the bath.", LONGEST_S, timeS),
    );
  if (highS > 1.5 * lowS)
    cautions.push(
      unwise(
        "wide-interval",
        "The interval is wide: develop a test strip before the negative.",
        1.5,
        highS / lowS,
      ),
    );
  let guessed = "";
  for (const { cause, basis } of factors)
    if (basis === "default" && cause !== "baseline") guessed += (guessed && ", ") + cause;
  if (guessed)
    cautions.push({
      code: "default-law",
      severity: "note",
      message: `No own data for ${guessed}: generic figures with a wide spread stand in.`,
    });
  unread(cautions, "baseline", baseline, BASELINE_FIELDS);
  unread(cautions, "conditions", conditions, CONDITION_FIELDS);
  // What learn made carries its schema, and the runs and figures behind its laws besides.
  if (!("schema" in knowledge)) unread(cautions, "knowledge", knowledge, LAWS);
}

function unwise(code: string, message: string, limit: number, actual: number): Caution {
  return { code, severity: "warn", message, limit, actual };
}

/** A field that is misspelt or in another unit would otherwise pass in silence as "as in the baseline". */
function unread(cautions: Caution[], side: string, given: object, known: readonly string[]): void {
  for (const name in given)
    if (!known.includes(name))
      cautions.push({
        code: "unknown-field",
        severity: "warn",
        message: `${side} has a field ${JSON.stringify(name.slice(0, 60))} that is not read.`,
        path: `/${side}/${name.replaceAll("~", "~0").replaceAll("/", "~1")}`,
      });
}
