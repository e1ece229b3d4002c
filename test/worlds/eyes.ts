/* How photographers judge a negative: from ln(right time/time given) to what they note. */
import type { RunOutcome } from "../../src/index.js";
import type { Random } from "./random.js";

/** Notes an outcome; `off` is ln(right time/time given), `givenS` the time given. */
export type Eye = (off: number, givenS: number) => RunOutcome;

const STEP = Math.log(1.4);

/**
 * Names the right time as a ratio, with a noise of 10 % and a quarter of the correction, of which 3 % are the eye's
 * own and the same each time: `alike`.
 */
export function judging(
  random: Random,
  noise: () => number = random.normal,
  times = 1,
  share = 1,
  alike: number = 0.03 * random.normal(),
): Eye {
  return (off) => {
    const noted = share * off + alike + times * Math.sqrt(0.1 ** 2 + (off / 4) ** 2 - 0.03 ** 2) * noise();
    // Nobody notes more than ten times the time, or less than a tenth.
    return { kind: "judged", timeRatio: Math.min(10, Math.max(0.1, Math.exp(noted))) };
  };
}

/** Measures, with a noise that it states. */
export function measuring(random: Random, logSd: number): Eye {
  return (off) => ({ kind: "judged", timeRatio: Math.exp(off + logSd * random.normal()), logSd });
}

/** What an eye sees: 7 % and a quarter of the correction. */
const seen = (random: Random, off: number): number => off + Math.hypot(0.07, off / 4) * random.normal();

/** Notes the nearest step of `size` steps: 0.5 for half steps, 1 for whole ones. */
export function stepping(random: Random, size: number): Eye {
  return (off) => {
    const steps = -size * Math.round(seen(random, off) / (size * STEP));
    return steps === 0 ? { kind: "good" } : { kind: "steps", steps };
  };
}

/** Notes thin, good or dense; the limit of good is the photographer's own, a quarter to half a step. */
export function naming(random: Random): Eye {
  const limit = STEP * (0.25 + 0.25 * random.uniform());
  return (off) => {
    const noted = seen(random, off);
    return { kind: noted > limit ? "thin" : noted < -limit ? "dense" : "good" };
  };
}

/** Notes good within a tolerance in ln(time), else the correction as judged; with a noise of its own. */
export function tolerating(random: Random, tolerance: number, noise: number): Eye {
  return (off) => {
    const noted = off + noise * random.normal();
    return Math.abs(noted) < tolerance
      ? { kind: "good" }
      : { kind: "judged", timeRatio: Math.exp(noted + (noted / 4) * random.normal()) };
  };
}

/** Measures the gradient, to 0.05; it grows with a power of time that is the material's own. */
export function densitometer(random: Random): Eye {
  const power = 0.69 + 0.14 * random.normal();
  return (off) => {
    const gamma = Math.max(0.1, 0.6 * Math.exp(-power * off) + 0.05 * random.normal());
    return { kind: "gamma", gamma, wanted: 0.6 };
  };
}

/** Watches the image appear, to a tenth; the factor is off by 15 %, the same in every run. */
export function watching(random: Random): Eye {
  const factorOff = 0.15 * random.normal();
  return (off, givenS) => ({
    kind: "appearance",
    appearanceS: (givenS * Math.exp(off + factorOff + 0.1 * random.normal())) / 10,
    factor: 10,
  });
}
