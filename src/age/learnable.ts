/*
 * Learning's half of age: one rate. A life has no number.
 */
import { isPast } from "../core/caution.js";
import type { Learnable } from "../core/cause.js";
import { rowOf } from "../core/row.js";
import { ageEffect, coveredAge, lastAge, LEAST_HALF_LIFE_H, MOST_HALF_LIFE_H, type AgeLaw } from "./law.js";

/** The rates, 1/h, of the longest and the shortest half-life that an age law takes. */
const RATES = [Math.LN2 / MOST_HALF_LIFE_H, Math.LN2 / LEAST_HALF_LIFE_H] as const;

/** Age as a number that runs teach. */
export const ageLearnable: Learnable<AgeLaw, number> = {
  place: (law) => {
    // As a law that was taught: an untaught one has at every age the spread of no law.
    const taught = { ...law, runs: 1 };
    const { sd } = ageEffect(taught, 0, 24);
    const rate = law.kind === "half-life" ? Math.LN2 / law.halfLifeH : 0;
    const value = law.kind === "half-life" ? rate : rateOf(law);
    const range = law.kind === "half-life" ? RATES : ([-1, 1] as const);
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
    const halfLifeH = Math.min(MOST_HALF_LIFE_H, Math.max(LEAST_HALF_LIFE_H, Math.LN2 / found.value));
    // A rate near 0 is not known the better for it: its spread is kept as it is.
    const { sdLog, ...origin } = law;
    return { ...origin, halfLifeH, sdRatePerH: found.sd };
  },
  // A rule of a day says of older baths what it says of a day: they would teach it what it does not cover.
  unfit: (law, from, to) => {
    if (isPast(to, lastAge(law))) return "past-life";
    return from !== to && isPast(Math.max(from, to), coveredAge(law)) ? "past-covered" : undefined;
  },
};

function rateOf(law: AgeLaw): number {
  return law.kind === "speeding" ? law.perDay : law.kind === "slowing" ? law.perRootH : 0;
}
