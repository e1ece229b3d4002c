/*
 * Learning's half of strength: by how many of its standard deviations the law is off that gave strengths, and
 * what is peculiar to each brew beside that.
 */
import type { Learnable, LearnableParameter } from "../core/cause.js";
import { joinRows, rowOf } from "../core/row.js";
import {
  brewName,
  strengthBeside,
  strengthSlope,
  type LearnedBrew,
  type Strength,
  type StrengthCorrection,
} from "./cause.js";

/** A notebook has numbers of their own for so many brews; what is peculiar to others is noise (assumed). */
const MOST_BREWS = 24;

/** What is peculiar to a brew has no limit of its own. */
const RANGE = [-10, 10] as const;

/** Strength as numbers that runs teach. */
export const strengthLearnable: Learnable<StrengthCorrection, Strength> = {
  place: (law, sides) => {
    const { correction: value, sdCorrection: sd = 1 } = law;
    const brews = ownBrews(law, sides);
    return {
      parameters: [
        { parameter: "strength", value, sd, range: [-1e3, 1e3] },
        ...[...brews].map(([parameter, one]): LearnableParameter => ({
          parameter,
          value: one.log,
          sd: one.sd,
          range: RANGE,
        })),
      ],
      row: (_from, to) => {
        const slope = strengthSlope(to);
        const name = brewName({ ...to, slope });
        const shared = rowOf("strength", slope);
        return brews.has(name)
          ? joinRows([shared, rowOf(name, 1)])
          : { ...shared, beside: strengthBeside(to) };
      },
    };
  },
  law: (law, learned) => {
    const found = learned.get("strength");
    if (found === undefined) return law;
    const brews = [...learned].flatMap(([parameter, { value: log, sd }]): readonly LearnedBrew[] => {
      if (parameter === "strength") return [];
      const [value, logSd, slope] = parameter.split(" ").slice(1).map(Number) as [number, number, number];
      return [{ value, logSd, slope, log, sd }];
    });
    return {
      ...law,
      correction: found.value,
      sdCorrection: found.sd,
      ...(brews.length > 0 && { brews }),
    };
  },
};

/** The brews of a notebook by the names of their numbers, in one order whatever the order of the runs. */
function ownBrews(law: StrengthCorrection, sides: readonly Strength[]): ReadonlyMap<string, LearnedBrew> {
  const fresh = sides.map((one): LearnedBrew => {
    const { value, logSd } = one;
    return { value, logSd, slope: strengthSlope(one), log: 0, sd: Math.sqrt(strengthBeside(one)) };
  });
  const all = [...fresh.filter(({ sd }) => sd > 0), ...(law.brews ?? [])];
  const byName = new Map(all.map((one) => [brewName(one), one]));
  return new Map([...byName].sort(([a], [b]) => (a < b ? -1 : 1)).slice(0, MOST_BREWS));
}
