/* Numbers held at their limits, over hundreds of crowded notebooks. All runs are invented. */
import { describe, expect } from "vitest";
import { genericDilutionLaw, learn, startKnowledge, type DevelopmentRun } from "../../src/index.js";
import { fc, test } from "../property.js";

describe("numbers at their limits", () => {
  // Without departures from a power and without interaction: three numbers.
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
      temperatureC: fc.double({ min: 8, max: 32, noNaN: true }),
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
            temperatureC: 11.969686166611353,
            dilution: "stock",
            ageH: 40,
            outcome: { kind: "good", logSd: 0.01 },
          },
          {
            timeS: 47.070634076601294,
            temperatureC: 16.234012615315436,
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
      const rows = runs.map(({ timeS, temperatureC, dilution, ageH, outcome: { logSd: sd } }) => ({
        sd,
        miss: Math.log(timeS / 510),
        slopes: [
          1,
          (1 / (temperatureC + 273.15) - 1 / 293.15) / 0.008314462618,
          -Math.log(shares[dilution]! * 10),
          0,
          0,
          ageH,
        ],
      }));
      const values = parameters.map(({ value }) => value);
      const names = ["baseline", "temperature", "dilution", "agitation", "use", "age"];
      const order = names.map((name) => parameters.findIndex((one) => one.parameter === name));
      for (const j of [0, 1, 2, 5]) {
        const { value, priorSd } = parameters[order[j]!]!;
        const before = half.parameters[j]!.value;
        let slope = (value - before) / priorSd;
        let size = Math.abs(slope);
        for (const { miss, slopes, sd } of rows) {
          const left = slopes.reduce((sum, each, i) => sum + each * values[order[i]!]!, -miss);
          const pull = (left * slopes[j]! * priorSd) / sd ** 2;
          slope += pull;
          size += Math.abs(pull);
        }
        if (held.includes(order[j]!)) expect(slope * Math.sign(before - value)).toBeGreaterThan(-1e-7 * size);
        else expect(Math.abs(slope), names[j]).toBeLessThanOrEqual(1e-7 * size);
      }
    },
  );
});
