/* The limits from which on advice is given. */
import { describe, expect, it } from "vitest";
import type { LearnedParameter } from "../../src/learning/types.js";
import { adviceOn } from "../../src/learning/advice.js";
import { anyOf } from "../helpers.js";

describe("adviceOn at its limits", () => {
  const numbers = (
    one: Partial<LearnedParameter>,
    other: Partial<LearnedParameter>,
  ): readonly LearnedParameter[] => [
    { parameter: "temperature", cause: "temperature", value: 70, sd: 1, priorSd: 10, runs: 3, ...one },
    { parameter: "age", cause: "age", value: 0, sd: 0.01, priorSd: 0.1, runs: 3, ...other },
  ];
  interface Told {
    readonly slopes: readonly (readonly [number, number])[];
    readonly variances?: readonly number[];
    readonly scatter?: number;
  }
  /** The advice for runs with these slopes in first standard deviations. */
  const adviceFor = (
    parameters: readonly LearnedParameter[],
    { slopes, variances, scatter = 1 }: Told,
  ): string[] => {
    const fitted = slopes.map((both, run) => ({
      run,
      row: {
        slopes: parameters.map(({ parameter: name, priorSd }, j) => ({
          parameter: name,
          slope: both[j]! / priorSd,
        })),
        beside: 0,
      },
    }));
    const fit = {
      ground: { parts: [{ cause: { name: "temperature" } }, { cause: { name: "age" } }] },
      model: { numbers: [{ value: 60 }, { value: 0 }], terms: [] },
      fitted,
      regression: { scatter, variances: variances ?? slopes.map(() => 0.25) },
      held: { atBound: [] },
    };
    return adviceOn(anyOf(fit), parameters, [], []).map(({ code }) => code);
  };
  /** The advice for two runs whose slopes, of one length, have the correlation rho. */
  const codes = (parameters: readonly LearnedParameter[], rho: number, scatter = 1): string[] =>
    adviceFor(parameters, {
      slopes: [
        [1, rho],
        [0, Math.sqrt(1 - rho * rho)],
      ],
      scatter,
    });
  it("causes are not told apart beyond a correlation of 0.95, of either sign, from two runs on", () => {
    const open = numbers({ sd: 9 }, { sd: 0.09 });
    expect([0.9499, -0.9499, 0.9501, -0.9501].map((rho) => codes(open, rho))).toEqual([
      [],
      [],
      ["not-separated"],
      ["not-separated"],
    ]);
    expect(codes(numbers({ sd: 9, runs: 2 }, { runs: 2 }), 1)).toEqual(["not-separated"]);
    expect(codes(numbers({ sd: 9, runs: 1 }, { runs: 1 }), 1)).toEqual([]);
  });
  it("a run says what changed together by how well it was read: a vague one in which a single cause changed does not tell them apart", () => {
    const open = numbers({ sd: 9 }, { sd: 0.09 });
    const told = (vague: number): string[] =>
      adviceFor(open, {
        slopes: [
          [1, 1],
          [1, 0],
        ],
        variances: [0.01, vague],
      });
    // The correlation is 1/√(1 + 0.01/vague): 0.95 at a variance of 0.0926.
    expect(told(0.09)).toEqual([]);
    expect(told(0.095)).toEqual(["not-separated"]);
  });
  it("it is enough that one of them has kept more than half of its first spread", () => {
    expect(codes(numbers({}, {}), 0.99)).toEqual([]);
    expect(codes(numbers({ sd: 5 }, {}), 0.99)).toEqual([]);
    expect(codes(numbers({ sd: 5.01 }, {}), 0.99)).toEqual(["not-separated"]);
    expect(codes(numbers({}, { sd: 0.06 }), 0.99)).toEqual(["not-separated"]);
  });
  it("a number is named from beyond three of its first standard deviations on, either way", () => {
    expect([90, 30, 90.1, 29.9].map((value) => codes(numbers({ value }, {}), 0))).toEqual([
      [],
      [],
      ["far-from-known"],
      ["far-from-known"],
    ]);
    // A number that cannot move has not moved.
    expect(codes(numbers({ value: 60, sd: 0, priorSd: 0, runs: 0 }, {}), 0)).toEqual([]);
  });
  it("runs scatter from beyond 1.5 on", () => {
    expect(codes(numbers({}, {}), 0, 1.5)).toEqual([]);
    expect(codes(numbers({}, {}), 0, 1.51)).toEqual(["scatter"]);
  });
});
