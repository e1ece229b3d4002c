/*
 * What a bath of the day is: the life that its make-up gives it, and what is left of it today.
 */
import {
  bathVerdict,
  brewLife,
  type Baseline,
  type BrewMaterial,
  type Caution,
  type Conditions,
  type Knowledge,
  type TimeEstimate,
} from "../index.js";
import { gravestFirst, refuses } from "../core/caution.js";
import type { Day } from "./day.js";
import { placed } from "./fault.js";

/** Laws with the life that the make-up of the bath gives it, where nothing else is known of its age. */
export function withLife({ laws, developer, baseline: { ageH = 0 } }: Day): Knowledge {
  const { brew } = developer?.fields ?? {};
  if (developer === undefined || brew === undefined || laws.age !== undefined) return laws;
  const places = [["/brew", `${developer.pointer}/brew`]] as const;
  const { lifeH, lowH, sources } = placed(places, () => brewLife(brew));
  // A known time from a bath older than that contradicts it.
  return lifeH > ageH ? { ...laws, age: { kind: "life", lifeH, lowH, sources, runs: 0 } } : laws;
}

/** What is judged by the bath's make-up, where that is known, and not by practice with any bath. */
const OF_MAKE_UP: readonly string[] = [
  ...["bath-past-life", "bath-may-fail", "bath-past-capacity", "bath-well-used"],
];

/** A time, and what is unwise about it. */
export interface Judged {
  readonly refused: boolean;
  readonly cautions: readonly Caution[];
}

/** A time under some conditions, with what the make-up of the bath says of it. */
export function judgedBy(
  { developer, evening }: Day,
  baseline: Baseline,
  { use, age }: Knowledge,
): (answer: TimeEstimate & Judged, conditions: Conditions) => Judged {
  if (developer === undefined) return ({ refused, cautions }) => ({ refused, cautions });
  const { fields, pointer } = developer;
  const { brew, family, leastMlPerRoll, capacityCm2PerL, use: ownUse = use } = fields;
  const material = evening?.["material"] as BrewMaterial | undefined;
  const places = [
    ["/bath", pointer],
    ["/bath/material", "/evening/material"],
  ] as const;
  return ({ timeS, highS, cautions }, conditions) => {
    const today = { ...baseline, ...conditions };
    const { usedCm2PerL, ageH, dilution } = today;
    const bath = { brew, family, leastMlPerRoll, capacityCm2PerL, use: ownUse, age, material };
    const verdict = placed(places, () => bathVerdict({ ...bath, usedCm2PerL, ageH, dilution, timeS, highS }));
    const sideOf = (path = ""): string =>
      path.slice(1) in conditions ? `/conditions${path}` : `/baseline${path}`;
    const all = gravestFirst([
      ...cautions.filter(({ code }) => !OF_MAKE_UP.includes(code)),
      ...verdict.cautions
        .filter(({ code }) => OF_MAKE_UP.includes(code))
        .map((one) => ({ ...one, path: sideOf(one.path) })),
    ]);
    return { refused: refuses(all), cautions: all };
  };
}
