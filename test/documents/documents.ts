/*
 * Every document of a public type is admitted by its checker, and the functions that take it agree: what the
 * checker admits they take, what it refuses they refuse at a place that it names.
 */
import { describe, expect, it } from "vitest";
import {
  bathState,
  bathVolumeMl,
  checkConditions,
  checkKnowledge,
  checkLedger,
  checkLog,
  compensate,
  describeProblem,
  equivalentTime,
  isInputError,
  learn,
  predict,
  startKnowledge,
  steer,
  type BathLedger,
  type CheckProblem,
  type InputError,
  type LearnedKnowledge,
} from "../../src/index.js";
import { fc } from "../property.js";
import { near } from "./model.js";
import { baselines, conditions, knowledge, learned, ledgers, readings, runs } from "./typed.js";

/** What a function gives, or how it refuses. */
function asked<Value>(call: () => Value): { readonly value: Value } | { readonly refused: InputError } {
  try {
    return { value: call() };
  } catch (error) {
    if (!isInputError(error)) throw error;
    return { refused: error };
  }
}

/**
 * A relation between values has a rule of its own, or names the other value; a drift may freeze the bath. The
 * rest is shape.
 */
const ofShape = ({ code, path, expected, actual }: CheckProblem): boolean =>
  code !== "needs-counterpart" &&
  expected.must === undefined &&
  expected.path === undefined &&
  !(path === "/conditions/temperatureC" && typeof actual === "number" && actual < 0);

/** Fails unless a checker and a function say the same of one input. */
function expectAgreement(
  problems: readonly Pick<CheckProblem, "path" | "code">[],
  answer: { readonly value: unknown } | { readonly refused: InputError },
  place: RegExp,
): void {
  if (problems.length === 0) expect(answer).toHaveProperty("value");
  else {
    expect(answer).toHaveProperty("refused");
    if (!("refused" in answer)) return;
    const { code, path } = answer.refused;
    const named = problems.map((one) => `${one.code} ${one.path}`);
    expect(named).toContain(`${code} ${path.replace(place, "")}`);
  }
}

/** Learning from ten thousand notebooks takes a minute, and longer on a busy machine. */
const TIMEOUT_MS = 600_000;

/** Declares the tests, each with so many documents. */
export function documentsAreAdmitted(numRuns: number): void {
  const every = <Values extends [unknown, ...unknown[]]>(property: fc.IProperty<Values>): void => {
    fc.assert(property, { numRuns });
  };

  /** The same of a property that counts what it is about: at least a fifth of all. */
  const often = <Values extends [unknown, ...unknown[]]>(
    property: (count: () => void) => fc.IProperty<Values>,
  ): void => {
    let counted = 0;
    every(
      property(() => {
        counted += 1;
      }),
    );
    expect(counted).toBeGreaterThan(numRuns / 5);
  };

  describe("a question", () => {
    const question = fc.tuple(baselines, conditions, knowledge);
    type Question = [baseline: never, conditions: never, knowledge: never];

    it(
      "of the types has no fault of shape, and compensate answers it as checkConditions says",
      () => {
        often((count) =>
          fc.property(question, (given) => {
            const check = checkConditions(...given);
            const problems = check.ok ? [] : check.problems;
            expect(problems.filter(ofShape)).toEqual([]);
            const answer = asked(() => compensate(...given));
            expectAgreement(problems, answer, /^$/);
            if (check.ok && "value" in answer) expect(check.cautions).toEqual(answer.value.cautions);
            if (check.ok) count();
          }),
        );
      },
      TIMEOUT_MS,
    );
    it(
      "near the types is refused by both, at the same place, or by neither",
      () => {
        often((count) =>
          fc.property(near(question), (given) => {
            if (!Array.isArray(given)) return;
            const check = checkConditions(given[0], given[1], given[2]);
            const answer = asked(() => compensate(...(given as Question)));
            expectAgreement(check.ok ? [] : check.problems, answer, /^$/);
            if (!check.ok) count();
          }),
        );
      },
      TIMEOUT_MS,
    );
  });

  describe("a log", () => {
    const steered = (log: unknown): unknown =>
      steer({ baseline: { timeS: 540, temperatureC: 20 }, conditions: {}, log: log as never });

    it(
      "of the type is admitted, and steer takes what was given and what comes back",
      () => {
        every(
          fc.property(readings, (given) => {
            const check = checkLog(given);
            expect(check.ok ? [] : check.problems).toEqual([]);
            if (!check.ok) return;
            expect(asked(() => steered(given))).toHaveProperty("value");
            if (check.log.length > 0) expect(asked(() => steered(check.log))).toHaveProperty("value");
            // What may be in another unit may lie where no bath in °C does.
            const inRange = check.log.every(({ temperatureC: c }) => c >= 0 && c <= 100);
            if (check.log.length > 1 && inRange)
              expect(asked(() => equivalentTime(check.log, 20))).toHaveProperty("value");
          }),
        );
      },
      TIMEOUT_MS,
    );
    it(
      "near the type is refused by both, at the same place, or by neither",
      () => {
        often((count) =>
          fc.property(near(readings), (given) => {
            const check = checkLog(given);
            const problems = check.ok ? [] : check.problems;
            // In the middle of a run no reading is refused for what the thermometer gave.
            const graver = problems.filter(({ path }) => !path.endsWith("/temperatureC"));
            expectAgreement(
              graver,
              asked(() => steered(given)),
              /^\/log/,
            );
            if (!check.ok) count();
          }),
        );
      },
      TIMEOUT_MS,
    );
  });

  describe("a ledger", () => {
    const latestH = 1e7;

    it(
      "of the type has no fault of shape, and is read as checkLedger says",
      () => {
        often((count) =>
          fc.property(ledgers, (given) => {
            const check = checkLedger(given);
            const problems = check.ok ? [] : check.problems;
            expect(problems.filter(ofShape)).toEqual([]);
            expectAgreement(
              problems,
              asked(() => bathVolumeMl(given, latestH)),
              /^\/ledger/,
            );
            if (!check.ok) return;
            count();
            expect(bathVolumeMl(check.ledger, latestH)).toBe(bathVolumeMl(given, latestH));
          }),
        );
      },
      TIMEOUT_MS,
    );
    it(
      "near the type is refused by both, at the same place, or by neither",
      () => {
        often((count) =>
          fc.property(near(ledgers), (given) => {
            const check = checkLedger(given);
            const answer = asked(() => bathVolumeMl(given as BathLedger, latestH));
            expectAgreement(check.ok ? [] : check.problems, answer, /^\/ledger/);
            if (!check.ok) count();
          }),
        );
      },
      TIMEOUT_MS,
    );
    it(
      "that is admitted has a use, unless the bath holds more than any bath can",
      () => {
        every(
          fc.property(ledgers, (given) => {
            if (!checkLedger(given).ok) return;
            const answer = asked(() => bathState(given, latestH));
            if ("refused" in answer) expect(answer.refused.expected.quantity).toBe("cm2PerL");
          }),
        );
      },
      TIMEOUT_MS,
    );
  });

  describe("learned knowledge", () => {
    it(
      "of the type has no fault of shape, and learn takes it as checkKnowledge says",
      () => {
        often((count) =>
          fc.property(learned, (given) => {
            const check = checkKnowledge(given);
            const problems = check.ok ? [] : check.problems;
            expect(problems.filter(({ rule }) => rule === "shape")).toEqual([]);
            expectAgreement(
              problems,
              asked(() => learn(given, [])),
              /^\/knowledge/,
            );
            if (!check.ok) return;
            count();
            expect(asked(() => predict(check.knowledge, {}))).toHaveProperty("value");
          }),
        );
      },
      TIMEOUT_MS,
    );
    it(
      "that starts, or is learned, is admitted as it is",
      () => {
        often((count) =>
          fc.property(learned, runs, ({ prior }, more) => {
            const { baseline, ...options } = prior;
            const answer = asked(() => learn(startKnowledge(baseline, options), more));
            if ("refused" in answer) return;
            const check = checkKnowledge(JSON.stringify(answer.value));
            expect(check.ok ? [] : check.problems.map((one) => describeProblem(one))).toEqual([]);
            expect(check.ok && check.cautions.filter(({ code }) => code === "stored-differs")).toEqual([]);
            count();
          }),
        );
      },
      TIMEOUT_MS,
    );
    it(
      "near the type is taken by learn where checkKnowledge admits it",
      () => {
        often((count) =>
          fc.property(near(learned), (given) => {
            const check = checkKnowledge(given);
            const answer = asked(() => learn(given as LearnedKnowledge, []));
            if (check.ok) expect(answer).toHaveProperty("value");
            else count();
          }),
        );
      },
      TIMEOUT_MS,
    );
  });
}
