/*
 * Room: learning. From the trade's ways of judging a negative to one number: ln of the time that would have been right, and how well that is
 * known.
 */
import { inRange, plainObject, positive, wrongKind, wrongValue } from "../core/guards.js";
import type { Run } from "./types.js";

/** What an eye lets pass in a good negative, in ln(time): ten per cent of time is the least change worth making (common practice). */
export const EYE_LOG_SD = 0.1;

/** A correction by eye is known to about a quarter of itself (common practice). */
export const EYE_SHARE = 0.25;

/** The factor on time of one step, N+1 or N−1: time by 1.4 or by 0.7 (common practice). */
const PER_STEP = 1.4;

/**
 * Gradient and the density of a patch grow as about time^0.7 near the wanted gradient: γ∞(1 − e^−kt) has the local exponent
 * kt·e^−kt/(1 − e^−kt), 0.69 at half of γ∞, and 0.83 to 0.46 from 0.3 to 0.75 of it, a fifth either way.
 */
const GROWTH_EXPONENT = 0.7;
const GROWTH_SHARE = 0.2;

/** A time of appearance and its factor are each known to about a tenth (common practice). */
const APPEARANCE_LOG_SD = 0.15;

const KINDS = "good, judged, steps, gamma, density, appearance, failed, fogged";

/** ln of the right time and its standard deviation; or, for a run that says nothing about it, why. */
export function readOutcome(where: string, run: Run): readonly [logTime: number, logSd: number] | string {
  const given = Math.log(positive(where, run.timeS, 1e6, " s", ".timeS"));
  const at = `${where}.outcome`;
  const kind: unknown = plainObject(at, run.outcome)["kind"];
  const outcome = run.outcome;
  const sd = (logSd: number | undefined, fallback: number): number => positive(at, logSd ?? fallback, 3, "", ".logSd");
  const byEye = (shift: number, logSd: number | undefined): readonly [number, number] => [
    given + shift,
    sd(logSd, Math.hypot(EYE_LOG_SD, EYE_SHARE * shift)),
  ];
  const byGrowth = (field: string, value: unknown, { wanted, ...rest }: { wanted: number; sd?: number; logSd?: number }): readonly [number, number] => {
    const measured = positive(at, value, 10, "", `.${field}`);
    const shift = Math.log(positive(at, wanted, 10, "", ".wanted") / measured) / GROWTH_EXPONENT;
    const reading = positive(at, rest.sd ?? 0.05, 3, "", ".sd") / measured / GROWTH_EXPONENT;
    return [given + shift, sd(rest.logSd, Math.hypot(reading, GROWTH_SHARE * shift))];
  };
  switch (outcome.kind) {
    case "good":
      return byEye(0, outcome.logSd);
    case "judged":
      return byEye(Math.log(positive(at, outcome.timeRatio, 100, "", ".timeRatio")), outcome.logSd);
    case "steps": {
      const steps = inRange(at, outcome.steps, -10, 10, "", ".steps");
      return byEye(-steps * Math.log(inRange(at, outcome.perStep ?? PER_STEP, 1, 4, "", ".perStep")), outcome.logSd);
    }
    case "gamma":
      return byGrowth("gamma", outcome.gamma, outcome);
    case "density":
      return byGrowth("density", outcome.density, outcome);
    case "appearance": {
      const appearanceS = positive(at, outcome.appearanceS, 1e6, " s", ".appearanceS");
      return [Math.log(appearanceS * positive(at, outcome.factor, 1000, "", ".factor")), sd(outcome.logSd, APPEARANCE_LOG_SD)];
    }
    case "failed":
    case "fogged":
      return outcome.kind;
    default:
      // A caller without types, or a stored file, can get here with any kind at all.
      return typeof kind === "string" ? wrongValue(`${at}.kind`, `one of ${KINDS}`, kind) : wrongKind(`${at}.kind`, "text", kind);
  }
}

