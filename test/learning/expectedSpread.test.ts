/* The closed form against brute force: every outcome of every test is put in, and the fit made anew. */
import { describe, expect, it } from "vitest";
import type { Row } from "../../src/core/row.js";
import { expectedSpread } from "../../src/learning/expectedSpread.js";
import { fitRegression, type Regression } from "../../src/learning/regression.js";
import { windowLikelihood } from "../../src/learning/windowLikelihood.js";
import { notebooks, type Notebook } from "../tools/notebooks.js";
import { seeded } from "../worlds/random.js";

const HALF_STEP = Math.log(1.4) / 2;
const EYE = 0.07;

interface Test {
  readonly row: Row;
  readonly off: number;
}

/** Root mean square of the question's spread over all outcomes of a test. */
function bruteForce({ unknowns, readings }: Notebook, fit: Regression, question: Row, test: Test): number {
  const { row, off } = test;
  const { mean, variance } = fit.along(row);
  const spread = variance + row.beside + (EYE * fit.scatter) ** 2;
  let sum = 0;
  for (let j = -10; j <= 10; j += 1) {
    const low = j === -10 ? -Infinity : (j - 0.5) * HALF_STEP;
    const high = j === 10 ? Infinity : (j + 0.5) * HALF_STEP;
    const { probability } = windowLikelihood(low, high, off, spread);
    if (probability < 1e-4) continue;
    // Counted from where the row is expected.
    const from = mean - off;
    const said = {
      kind: "window",
      low: from + low,
      high: from + high,
      log: from + j * HALF_STEP,
      sd: EYE,
    } as const;
    const after = fitRegression(unknowns, [...readings, { row, said }]);
    sum += probability * (after.along(question).variance + question.beside);
  }
  return Math.sqrt(sum);
}

const random = seeded(5);
const books = notebooks(7);
const cases = Array.from({ length: 60 }, (_, i) => {
  const book = books[i % books.length]!;
  const [question, ...rows] = [0, 1, 2, 3, 4].map((k) => book.questions[(k + i) % 5]!);
  const tests = rows.map((row): Test => ({
    row,
    off: 0.4 * (random.uniform() - 0.5),
  }));
  return { book, question: question!, tests };
});

const asked = (fit: Regression, row: Row) => ({ row, variance: fit.along(row).variance + row.beside });

describe("the expected spread after a test", () => {
  it("ranks tests as brute force does: the best in 55 of 60, and never 6 % behind it", () => {
    let best = 0;
    let furthest = 1;
    for (const { book, question, tests } of cases) {
      const fit = fitRegression(book.unknowns, book.readings);
      const exact = tests.map((test) => bruteForce(book, fit, question, test));
      const quick = tests.map((test) => expectedSpread(fit, asked(fit, question), test));
      const chosen = exact[quick.indexOf(Math.min(...quick))]!;
      if (chosen <= Math.min(...exact) * (1 + 1e-9)) best += 1;
      furthest = Math.max(furthest, chosen / Math.min(...exact));
    }
    expect(best).toBeGreaterThanOrEqual(55);
    expect(furthest).toBeLessThan(1.06);
  });
});

describe("an outcome", () => {
  // A time that is known to a part of a window: of one known worse than that, all strips tell alike.
  const book = books.find(({ name }) => name === "25 judged");
  const fit = fitRegression(book!.unknowns, book!.readings);
  const row = book!.questions[0]!;
  const after = (test: object, noise?: "stated"): number =>
    expectedSpread(fit, asked(fit, row), { row, off: 0, ...test }, noise);

  it("judged by eye tells more of a strip 15 % off than of one at the predicted time", () => {
    expect(after({ off: Math.log(1.15) })).toBeLessThan(after({ off: 0 }));
  });
  it("that is measured tells more, to 4 % unless noise is stated", () => {
    expect(after({ outcomeLogSd: 0.05 })).toBeLessThan(after({}));
    expect(after({ outcomeLogSd: 0.001 })).toBe(after({ outcomeLogSd: 0.002 }));
    expect(after({ outcomeLogSd: 0.001 }, "stated")).toBeLessThan(after({ outcomeLogSd: 0.002 }, "stated"));
  });
});
