/*
 * Learning's half of age: one rate. A life has no number.
 */
import { isPast } from "../core/caution.js";
import type { Learnable } from "../core/cause.js";
import { rowOf } from "../core/row.js";
import { ageEffect, lastAge, type AgeLaw } from "./law.js";

/** The rate, 1/h, of the longest half-life that an age law takes, 1e6 h. */
const LEAST_RATE = Math.LN2 / 1e6;

/** Age as a number that runs teach. */
export const ageLearnable: Learnable<AgeLaw, number> = {
  place: (law) => {
    // As a law that was taught: an untaught one has at every age the spread of no law.
    const taught = { ...law, runs: 1 };
    const { sd } = ageEffect(taught, 0, 24);
    const rate = law.kind === "half-life" ? Math.LN2 / law.halfLifeH : 0;
    const value = law.kind === "half-life" ? rate : rateOf(law);
    const range =
      law.kind === "half-life" ? ([LEAST_RATE, Math.max(1e3, rate)] as const) : ([-1, 1] as const);
    return {
      parameters: [{ parameter: "age", value, sd, range }],
      row: (from, to) => {
        const { slope, beside } = ageEffect(taught, from, to);
        return { ...rowOf("age", slope), beside: beside * beside };
      },
    };
  },
  law: (law, learned) => {
    const found = learned.get("age");
    if (found === undefined || law.kind === "life") return law;
    if (law.kind === "speeding") return { ...law, perDay: found.value, sdPerDay: found.sd };
    if (law.kind === "slowing") return { ...law, perRootH: found.value, sdPerRootH: found.sd };
    // To a rate and back, a half-life at the end of its range must not round out of it.
    const halfLifeH = Math.min(1e6, Math.max(1e-30, Math.LN2 / found.value));
    return { ...law, halfLifeH, sdLog: Math.min(3, found.sd / found.value) };
  },
  unfit: (law, _from, to) =>
    isPast(to, lastAge(law)) ? `past the bath's life of ${lastAge(law)} h` : undefined,
};

function rateOf(law: AgeLaw): number {
  return law.kind === "speeding" ? law.perDay : law.kind === "slowing" ? law.perRootH : 0;
}
