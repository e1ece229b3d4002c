/* Numbers held at their limits, over hundreds of crowded notebooks. All runs are invented. */
import { describe, expect } from "vitest";
import { genericDilutionLaw, learn, startKnowledge, type DevelopmentRun } from "../../src/index.js";
import { fc, test } from "../property.js";

describe("numbers at their limits", () => {
  // Without departures from a power and without interaction. Those from an energy have a gap from each
  // temperature to the next, since no two lie nearer than 6 °C.
  const interaction = { perHalvingKJPerMol: 0, sdKJPerMol: 0 };
  const laws = { dilution: { ...genericDilutionLaw, scatterLogSd: 0 }, interaction };
  interface Crowded extends DevelopmentRun {
    readonly dilution: string;
    readonly ageH: number;
    readonly outcome: { readonly kind: "good"; readonly logSd: number };
  }
  const crowded: fc.Arbitrary<readonly Crowded[]> = fc.array(
    fc.record({
      timeS: fc.double({ min: 30, max: 8000, noNaN: true }),
      temperatureC: fc.constantFrom(8, 14, 20, 26, 32),
      dilution: fc.constantFrom("stock", "1+3", "1+9", "1+30"),
      ageH: fc.integer({ min: 0, max: 60 }),
      outcome: fc.record({ kind: fc.constant("good" as const), logSd: fc.constantFrom(0.01, 0.05, 0.3) }),
    }),
    { minLength: 2, maxLength: 8 },
  );
  test.prop<[readonly Crowded[]]>([crowded], {
    numRuns: 500,
    // Holding and letting go in the order in which they were held came round in a circle here.
    examples: [
      [
        [
          {
            timeS: 169.55365775153925,
            temperatureC: 14,
            dilution: "stock",
            ageH: 40,
            outcome: { kind: "good", logSd: 0.01 },
          },
          {
            timeS: 47.070634076601294,
            temperatureC: 20,
            dilution: "1+9",
            ageH: 26,
            outcome: { kind: "good", logSd: 0.01 },
          },
        ],
      ],
    ],
  })(
    "no number inside its range would fit better elsewhere, and none at its limit further inside",
    (runs) => {
      const half = startKnowledge(
        { timeS: 510, temperatureC: 20, dilution: "1+9" },
        { noise: "stated", laws: { ...laws, age: { kind: "half-life", halfLifeH: 24 } } },
      );
      const known = learn(half, runs);
      const { parameters } = known;
      const held = known.advice
        .filter(({ code }) => code === "held-at-limit")
        .map(({ path }) => Number(path?.slice("/parameters/".length)));
      // The sum of squares that the fit makes least, moved along each number in turn: half its slope, in
      // standard deviations of what was known.
      const shares: Readonly<Record<string, number>> = {
        "stock": 1,
        "1+3": 1 / 4,
        "1+9": 1 / 10,
        "1+30": 1 / 31,
      };
      const slopesOf = ({ temperatureC, dilution, ageH }: Crowded): Readonly<Record<string, number>> => ({
        baseline: 1,
        temperature: (1 / (temperatureC + 273.15) - 1 / 293.15) / 0.008314462618,
        dilution: -Math.log(shares[dilution]! * 10),
        age: ageH,
        ...Object.fromEntries(
          gaps.map(([name, low, high]) => [
            name,
            (low >= 20 && temperatureC >= high ? 1 : 0) - (high <= 20 && temperatureC <= low ? 1 : 0),
          ]),
        ),
      });
      const gaps = parameters.flatMap(({ parameter }) => {
        const [, low, high] = /^temperature (\d+) to (\d+)$/.exec(parameter) ?? [];
        return low === undefined ? [] : [[parameter, Number(low), Number(high)] as const];
      });
      expect(gaps.length).toBe(new Set([20, ...runs.map(({ temperatureC }) => temperatureC)]).size - 1);
      const rows = runs.map((run) => ({
        sd: run.outcome.logSd,
        miss: Math.log(run.timeS / 510),
        slopes: slopesOf(run),
      }));
      const values = new Map(parameters.map(({ parameter, value }) => [parameter, value]));
      for (const name of ["baseline", "temperature", "dilution", "age", ...gaps.map(([gap]) => gap)]) {
        const j = parameters.findIndex(({ parameter }) => parameter === name);
        const { value, priorSd } = parameters[j]!;
        const before = half.parameters.find(({ parameter }) => parameter === name)?.value ?? 0;
        let slope = (value - before) / priorSd;
        let size = Math.abs(slope);
        for (const { miss, slopes, sd } of rows) {
          const left = Object.entries(slopes).reduce(
            (sum, [of, each]) => sum + each * values.get(of)!,
            -miss,
          );
          const pull = (left * slopes[name]! * priorSd) / sd ** 2;
          slope += pull;
          size += Math.abs(pull);
        }
        if (held.includes(j)) expect(slope * Math.sign(before - value)).toBeGreaterThan(-1e-7 * size);
        else expect(Math.abs(slope), name).toBeLessThanOrEqual(1e-7 * size);
      }
    },
  );
});
