/*
 * The laws that every cause keeps, one a row, over the list of causes. Where a cause has no part in a law, its entry in
 * subjects.ts says why.
 */
import { describe, expect, it } from "vitest";
import { causes, learnables } from "../../src/causes.js";
import {
  compensate,
  effect as effectOf,
  learn,
  mergeKnowledge,
  startKnowledge,
  type Baseline,
  type Conditions,
  type DevelopmentRun,
  type EffectOfCause,
} from "../../src/index.js";
import { fc } from "../property.js";
import { subjects, type Subject, type Why } from "./subjects.js";

type Cause = (typeof causes)[number];

/** The effect of any cause, whose sides and law the list does not tell apart. */
const effect = effectOf as (cause: Cause["name"], from: unknown, to: unknown, law: unknown) => EffectOfCause;

/** A law with three conditions that it allows, and the cause whose they are. */
interface Drawn {
  readonly cause: Cause;
  readonly subject: Subject<unknown, unknown>;
  readonly law: unknown;
  readonly at: readonly [unknown, unknown, unknown];
  /** a number from 0 to 1 */
  readonly share: number;
}

/** One law: how it is tried, and why a cause has no part in it. */
interface Row {
  readonly law: string;
  readonly holds: (drawn: Drawn) => void;
  readonly not?: (subject: Subject<unknown, unknown>, cause: Cause) => Why | undefined;
  readonly runs?: number;
}

const known: Baseline = { timeS: 540, temperatureC: 20 };
const logOf = ({ cause, law }: Drawn, from: unknown, to: unknown): number =>
  Math.log(effect(cause.name, from, to, law).factor);
const spreadOf = ({ cause, law }: Drawn, from: unknown, to: unknown): number =>
  effect(cause.name, from, to, law).logSd;
/** Equal to the rounding of logarithms that may reach 50. */
const same = (a: number, b: number, most = 1e-10): void => {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(most * (1 + Math.abs(a)));
};
/** A known time with one condition of a cause, and today's. What is relative has no known side. */
const sides = ({ cause }: Drawn, from: unknown, to: unknown): readonly [Baseline, Conditions] => [
  "relative" in cause ? known : { ...known, [cause.field]: from },
  { [cause.field]: to },
];
/** The known side of a relative cause is its start. */
const fromOf = ({ cause, at: [from] }: Drawn): unknown => ("relative" in cause ? cause.start : from);
const why = (one: unknown): Why | undefined => (typeof one === "string" ? one : undefined);
const copyOf = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

const table: readonly Row[] = [
  {
    law: "identity: no change is exactly 1, without a spread",
    holds: ({ cause, law, at: [a] }) => {
      expect(effect(cause.name, a, a, law)).toEqual({ factor: 1, logSd: 0 });
    },
  },
  {
    law: "inverse: there and back is 1, with one spread both ways",
    holds: (drawn) => {
      const [a, b] = drawn.at;
      same(logOf(drawn, a, b), -logOf(drawn, b, a));
      same(spreadOf(drawn, a, b), spreadOf(drawn, b, a));
    },
  },
  {
    law: "composition: two steps are one",
    holds: (drawn) => {
      const [a, b, c] = drawn.at;
      same(logOf(drawn, a, b) + logOf(drawn, b, c), logOf(drawn, a, c));
    },
  },
  {
    law: "spread: finite, not negative, and by a detour never less than straight",
    holds: (drawn) => {
      const [a, b, c] = drawn.at;
      const straight = spreadOf(drawn, a, c);
      expect(straight).toBeGreaterThanOrEqual(0);
      expect(straight).toBeLessThan(Infinity);
      expect(straight).toBeLessThanOrEqual(
        (spreadOf(drawn, a, b) + spreadOf(drawn, b, c)) * (1 + 1e-9) + 1e-12,
      );
    },
  },
  {
    law: "monotony: what is slower never takes less time",
    holds: (drawn) => {
      const { subject, law, at, share } = drawn;
      for (const step of [10 * share, share, 1e-3 * share]) {
        const slower = subject.slower(at[0], step, law);
        if (slower !== undefined) expect(logOf(drawn, at[0], slower)).toBeGreaterThanOrEqual(-1e-12);
      }
    },
  },
  {
    law: "continuity: a step of rounding to either side changes time and spread by as little, also at a join",
    holds: (drawn) => {
      const { subject, law, at } = drawn;
      for (const step of [1e-3, -1e-3, 1e-6, -1e-6, 1e-9, -1e-9]) {
        const near = subject.slower(at[0], step, law);
        if (near === undefined) continue;
        // At worst with the root of the step, as the spread of a random walk and the decline of a slowing bath.
        const most = 3 * Math.sqrt(Math.abs(step));
        expect(Math.abs(logOf(drawn, at[0], near))).toBeLessThan(most);
        expect(spreadOf(drawn, at[0], near)).toBeLessThan(most);
      }
    },
  },
  {
    law: "one number: the cause's own function and the row of an answer have the factor of the effect",
    holds: (drawn) => {
      const { cause, subject, law, at } = drawn;
      const from = fromOf(drawn);
      const { factor, logSd } = effect(cause.name, from, at[1], law);
      if (typeof subject.factor === "function") same(subject.factor(from, at[1], law), factor, 1e-12);
      const answer = compensate(...sides(drawn, from, at[1]), { [cause.law]: law });
      const row = answer.factors.find((one) => one.cause === cause.name);
      same(row!.value, factor, 1e-12);
      same(row!.logSd, logSd, 1e-9);
      same(answer.timeS / known.timeS, factor, 1e-12);
    },
  },
  {
    law: "scale: a known time so many times as long gives a time so many times as long, by the same rows",
    holds: (drawn) => {
      const { cause, law, at, share } = drawn;
      const times = 0.5 + 10 * share;
      const [baseline, today] = sides(drawn, at[0], at[1]);
      const laws = { [cause.law]: law };
      const once = compensate(baseline, today, laws);
      const more = compensate({ ...baseline, timeS: baseline.timeS * times }, today, laws);
      for (const name of ["timeS", "lowS", "highS"] as const) same(more[name] / once[name], times, 1e-12);
      expect(more.factors).toEqual(once.factors);
    },
  },
  {
    law: "scale: a law with all its times so many times as long is the same law",
    not: ({ rescaled }) => why(rescaled),
    holds: (drawn) => {
      const { subject, law, at, share } = drawn;
      const rescaled = subject.rescaled as (law: unknown, times: number) => unknown;
      const other = { ...drawn, law: rescaled(law, 1 - 0.9 * share) };
      same(logOf(other, at[0], at[1]), logOf(drawn, at[0], at[1]));
    },
  },
  {
    law: "order: rows and fields in another order change no bit",
    holds: (drawn) => {
      const { cause, subject, law, at } = drawn;
      const turned = (one: unknown): unknown =>
        typeof one === "object" && one !== null && !Array.isArray(one)
          ? Object.fromEntries(Object.entries(one).reverse())
          : one;
      const rows = typeof subject.reordered === "function" ? subject.reordered(law) : law;
      expect(effect(cause.name, turned(at[0]), turned(at[1]), turned(rows))).toEqual(
        effect(cause.name, at[0], at[1], law),
      );
    },
  },
  {
    law: "storage: JSON changes no bit",
    holds: ({ cause, law, at: [a, b] }) => {
      expect(effect(cause.name, copyOf(a), copyOf(b), copyOf(law))).toEqual(effect(cause.name, a, b, law));
    },
  },
  {
    law: "units: the same condition in other words has the same time",
    not: ({ said }) => why(said),
    holds: (drawn) => {
      const { subject, at } = drawn;
      const said = subject.said as (given: unknown) => unknown;
      same(logOf(drawn, said(at[0]), said(at[1])), logOf(drawn, at[0], at[1]), 1e-9);
    },
  },
  {
    law: "merge: two notebooks that start alike are one, whichever is first",
    runs: 10,
    not: (_, { name }) => (name in learnables ? undefined : "no run teaches it"),
    holds: (drawn) => {
      const { cause, law, at, share } = drawn;
      const [baseline] = sides(drawn, at[0], at[1]);
      const start = startKnowledge(baseline, { laws: { [cause.law]: law } });
      const runs = at.map((given, i): DevelopmentRun => ({
        ...known,
        [cause.field]: given,
        timeS: 400 + 100 * i + 100 * share,
        outcome: { kind: "good" },
      }));
      const [mine, yours] = [learn(start, runs.slice(0, 1)), learn(start, runs.slice(1))];
      const whole = learn(start, runs);
      expect(mergeKnowledge(mine, yours)).toEqual(whole);
      expect(mergeKnowledge(yours, mine)).toEqual(whole);
    },
  },
];

/** What is drawn for one cause; the cause itself would hide it in the report of a failure. */
const drawn = ({ law, given }: Subject<unknown, unknown>): fc.Arbitrary<Omit<Drawn, "cause" | "subject">> =>
  law.chain((one) => {
    const side = given(one);
    return fc.record({
      law: fc.constant(one),
      at: fc.tuple(side, side, side),
      share: fc.double({ min: 0, max: 1, noNaN: true }),
    });
  });

describe.each(table)("$law", ({ holds, not, runs = 100 }) => {
  const partaking = causes.filter((cause) => not?.(subjects[cause.name], cause) === undefined);
  it.each(partaking.map((cause) => [cause.name, cause] as const))("%s", (name, cause) => {
    const subject = subjects[name];
    fc.assert(
      fc.property(drawn(subject), (one) => {
        holds({ ...one, cause, subject });
      }),
      { numRuns: runs },
    );
  });
});

describe("the table of laws", () => {
  it("leaves a cause out of a law only for a reason that is written", () => {
    const left = table.flatMap(({ law, not }) =>
      causes.flatMap((cause): readonly string[] => {
        const reason = not?.(subjects[cause.name], cause);
        return reason === undefined ? [] : [`${law.split(":", 1)[0]!} of ${cause.name}: ${reason}`];
      }),
    );
    expect(left).toEqual([
      "scale of agitation: no time stands in its law",
      "scale of use: no time stands in its law",
      "scale of age: no time stands in its law",
      "scale of strength: no time stands in its law",
      "scale of push: no time stands in its law",
      "units of strength: it is a result of brewStrength, which nobody writes",
      "units of contrast: a gradient is a bare number",
      "units of push: stops are a bare number",
      "merge of contrast: no run teaches it",
    ]);
  });
});
