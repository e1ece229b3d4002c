/*
 * The regression against the outside: certified fits, a general-purpose matrix library, and published tables
 * as if they were runs.
 */
import { Matrix, solve } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { fitRegression } from "../../src/learning/regression.js";
import {
  genericAgitationLaw,
  genericDilutionLaw,
  genericTemperatureLaw,
  genericUseLaw,
  learn,
  predict,
  startKnowledge,
  type LearnedKnowledge,
  type Run,
} from "../../src/index.js";
import { dilutionSeries } from "../reference/dilution.js";
import { norris, pontius, type Certified } from "../reference/nist.js";
import { timeTables } from "../reference/temperature.js";

const R = 8.314462618e-3;
const inverse = (celsius: number): number => 1 / (celsius + 273.15);

describe("against certified fits (NIST StRD, linear least squares)", () => {
  // A prior 1e6 times as wide as the certified standard error, in each number, is flat to twelve digits.
  const flat = (set: Certified, powers: readonly number[]) => {
    const scale = set.sd.map((sd) => (1e6 * sd) / set.residualSd);
    const rows = set.points.map(([x]) => powers.map((power, j) => x ** power * scale[j]!));
    const y = set.points.map(([, each]) => each);
    const unknowns = powers.map((power) => ({ parameter: `x^${power}`, sd: 1 }));
    const fit = fitRegression(
      unknowns,
      rows.map((slopes, i) => ({
        row: {
          slopes: slopes.map((slope, j) => ({ parameter: unknowns[j]!.parameter, slope })),
          beside: 0,
        },
        said: { kind: "value", log: y[i]!, sd: 1 },
      })),
      "stated",
    );
    const mean = unknowns.map(({ parameter }) => fit.mean(parameter));
    const residual = rows.reduce(
      (sum, row, i) => sum + (y[i]! - row.reduce((total, each, j) => total + each * mean[j]!, 0)) ** 2,
      0,
    );
    const residualSd = Math.sqrt(residual / (y.length - powers.length));
    return {
      residualSd,
      estimate: mean.map((u, j) => u * scale[j]!),
      sd: unknowns.map(({ parameter }, j) => residualSd * scale[j]! * fit.sd(parameter)),
    };
  };
  it.each([
    ["Norris", norris, [0, 1]],
    ["Pontius", pontius, [0, 1, 2]],
  ] as const)("%s to six digits, with the prior flat", (_, set, powers) => {
    const found = flat(set, powers);
    expect(found.residualSd / set.residualSd).toBeCloseTo(1, 6);
    set.estimate.forEach((certified, j) => {
      expect(found.estimate[j]! / certified).toBeCloseTo(1, 6);
      expect(found.sd[j]! / set.sd[j]!).toBeCloseTo(1, 6);
    });
  });
});

describe("against a ridge regression by a matrix library (ml-matrix, QR of the augmented rows)", () => {
  const runs: readonly Run[] = [
    {
      timeS: 540,
      temperatureC: 20,
      dilution: "1+9",
      usedCm2PerL: 0,
      ageH: 0,
      outcome: { kind: "good", logSd: 0.05 },
    },
    {
      timeS: 700,
      temperatureC: 16,
      dilution: "1+14",
      usedCm2PerL: 516,
      ageH: 1,
      outcome: { kind: "judged", timeRatio: 1.3, logSd: 0.08 },
    },
    {
      timeS: 300,
      temperatureC: 25,
      dilution: "1+4",
      usedCm2PerL: 900,
      ageH: 9,
      outcome: { kind: "good", logSd: 0.1 },
    },
    {
      timeS: 800,
      temperatureC: 13,
      dilution: "1+9",
      ageH: 40,
      outcome: { kind: "judged", timeRatio: 0.8, logSd: 0.12 },
    },
    { timeS: 555, temperatureC: 18.5, agitation: { everyS: 30 }, outcome: { kind: "good", logSd: 0.07 } },
  ];
  const dilutions = [10, 15, 5, 10, 10];
  const used = [0, 516, 900, 0, 0];
  const ages = [0, 1, 9, 40, 0];
  const everyS = [60, 60, 60, 60, 30];

  it("gives the same numbers and spreads", () => {
    const start = startKnowledge(
      { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 } },
      { baseLogSd: 0.3, noise: "stated" },
    );
    const known = learn(start, runs);
    expect(known.advice.map(({ code }) => code)).not.toContain("held-at-limit");
    // The model written out again: generic laws, use and agitation as their curves stretched.
    const energy = genericTemperatureLaw.activationEnergyKJPerMol;
    const n = genericDilutionLaw.exponent;
    const { staleLoss, staleTimeS } = genericAgitationLaw;
    const { increase, perCm2PerL } = genericUseLaw;
    const stale = (s: number): number => 1 - (1 - Math.exp(-s / staleTimeS)) / (s / staleTimeS);
    const rate = (s: number): number => 1 - staleLoss * stale(s);
    const X: number[][] = [];
    const y: number[] = [];
    runs.forEach((run, i) => {
      const outcome = run.outcome as { timeRatio?: number; logSd: number };
      const portions = used[i]! / perCm2PerL;
      const x = [
        1,
        (inverse(run.temperatureC) - inverse(20)) / R,
        Math.log(dilutions[i]! / 10),
        Math.log(rate(60) / rate(everyS[i]!)) / staleLoss,
        Math.log(1 + increase * portions) / increase,
        (Math.min(24, ages[i]!) / 24) ** 1.5,
        // Energy and dilution together, and the departures over the gaps 1+4 to 1+9 and 1+9 to 1+14, 30 to 60 s.
        (((inverse(run.temperatureC) - inverse(20)) / R) * Math.log(dilutions[i]! / 10)) / Math.LN2,
        -Number(dilutions[i] === 5),
        Number(dilutions[i] === 15),
        -Number(everyS[i] === 30),
      ];
      const expected =
        Math.log(510) +
        -12 * x[6]! +
        energy * x[1]! +
        n * x[2]! +
        Math.log(rate(60) / rate(everyS[i]!)) +
        Math.log(1 + increase * portions);
      // Past a day no number tells of an age: 2 % by the root of an hour is noise.
      const sd = Math.hypot(outcome.logSd, 0.02 * Math.sqrt(Math.max(0, ages[i]! - 24)));
      X.push(x.map((each) => each / sd));
      y.push((Math.log(run.timeS * (outcome.timeRatio ?? 1)) - expected) / sd);
    });
    // The prior as rows of its own: ridge regression, each number divided by its prior standard deviation.
    const sds = [
      0.3,
      genericTemperatureLaw.sdKJPerMol!,
      genericDilutionLaw.sd!,
      genericAgitationLaw.sdStaleLoss!,
      genericUseLaw.sdIncrease!,
      0.08,
      20,
      0.19 * Math.sqrt(Math.log(2)),
      0.19 * Math.sqrt(Math.log(1.5)),
      0.08 * Math.sqrt(Math.log(rate(30) / rate(60)) / staleLoss),
    ];
    sds.forEach((sd, j) => {
      X.push(sds.map((_, k) => (k === j ? 1 / sd : 0)));
      y.push(0);
    });
    const matrix = new Matrix(X);
    const shift = solve(matrix, Matrix.columnVector(y)).to1DArray();
    const covariance = solve(matrix.transpose().mmul(matrix), Matrix.eye(10));
    const priors = [0, energy, n, staleLoss, increase, 0, -12, 0, 0, 0];
    const named = known.parameters.map(({ parameter }) => parameter);
    const gap = (cause: string, i: number): string =>
      named.filter((name) => name.startsWith(`${cause} `))[i]!;
    // Along ln(concentration) the weaker dilution comes first.
    const order = [
      ...["baseline", "temperature", "dilution", "agitation", "use", "age", "interaction"],
      ...[gap("dilution", 1), gap("dilution", 0), gap("agitation", 0)],
    ].map((name) => named.indexOf(name));
    expect(named).toHaveLength(11);
    // Departures count along the axis: toward stronger baths, and longer intervals.
    const sign = [1, 1, 1, 1, 1, 1, 1, -1, -1, 1];
    priors.forEach((prior, j) => {
      const { value, sd, priorSd } = known.parameters[order[j]!]!;
      expect(value).toBeCloseTo(prior + sign[j]! * shift[j]!, 9);
      expect(sd).toBeCloseTo(Math.sqrt(covariance.get(j, j)), 9);
      expect(priorSd).toBeCloseTo(sds[j]!, 12);
      priors.forEach((_, k) => {
        expect(known.joint.correlation[order[j]!]![order[k]!]).toBeCloseTo(
          (sign[j]! * sign[k]! * covariance.get(j, k)) /
            Math.sqrt(covariance.get(j, j) * covariance.get(k, k)),
          9,
        );
      });
    });
    // And the time and its spread for other conditions, by the matrix.
    const question = { temperatureC: 14, dilution: "1+19", ageH: 4 };
    const warmth = (inverse(14) - inverse(20)) / R;
    const q = [1, warmth, Math.log(2), 0, 0, (4 / 24) ** 1.5, warmth, 0, 1, 0];
    const answer = predict(known, question);
    const logTime = Math.log(510) + q.reduce((sum, each, j) => sum + each * (priors[j]! + shift[j]!), 0);
    expect(answer.timeS).toBeCloseTo(Math.exp(logTime), 6);
    const variance = Matrix.rowVector(q).mmul(covariance).mmul(Matrix.columnVector(q)).get(0, 0);
    // Beyond the weakest dilution of the runs the walk goes on.
    const beyond = 0.19 ** 2 * Math.log(20 / 15);
    expect(Math.log(answer.highS / answer.timeS) / 1.6448536269514722).toBeCloseTo(
      Math.sqrt(variance + beyond),
      9,
    );
  });
});

describe("published tables as if their rows were runs", () => {
  // The starting time knows nothing of the table: 7 min, the middle of all these tables, which lie within a
  // factor of 1.8 either way at 90 %.
  const startOf = (dilution?: string): LearnedKnowledge =>
    startKnowledge(
      { timeS: 420, temperatureC: 20, ...(dilution !== undefined && { dilution }) },
      { baseLogSd: 0.35 },
    );
  type Row = Omit<Run, "outcome">;
  const byTemperature = timeTables.map(({ unit, rows }): readonly Row[] =>
    rows.map(({ temperature, minutes }) => ({
      timeS: minutes * 60,
      temperatureC: unit === "F" ? (temperature - 32) / 1.8 : temperature,
    })),
  );
  const byDilution = dilutionSeries
    .filter(({ rows }) => rows.length > 2)
    .map(({ rows }): readonly Row[] =>
      rows.map(({ dilution, minutes }) => ({ timeS: minutes * 60, temperatureC: 20, dilution })),
    );

  const choices = (tables: readonly (readonly Row[])[], logSd?: number) => {
    const outcome = logSd === undefined ? ({ kind: "good" } as const) : ({ kind: "good", logSd } as const);
    let all = 0;
    let inside = 0;
    const widths: number[] = [];
    for (const rows of tables) {
      const start = startOf(rows[0]!.dilution as string | undefined);
      rows.forEach((one, i) => {
        for (const two of rows.slice(i + 1)) {
          const known = learn(start, [
            { ...one, outcome },
            { ...two, outcome },
          ]);
          for (const third of rows.filter((row) => row !== one && row !== two)) {
            const { timeS, ...conditions } = third;
            const [before, after] = [predict(start, conditions), predict(known, conditions)];
            all += 1;
            if (timeS >= after.lowS && timeS <= after.highS) inside += 1;
            widths.push(Math.log(after.highS / after.lowS) / Math.log(before.highS / before.lowS));
          }
        }
      });
    }
    widths.sort((a, b) => a - b);
    return { all, share: inside / all, width: widths[Math.floor(all / 2)]! };
  };

  it("two rows judged by eye put the third inside the interval: 97 % of all choices, 0.26 times as wide as before", () => {
    const { all, share, width } = choices([...byTemperature, ...byDilution]);
    expect(all).toBe(459);
    expect(share).toBeGreaterThanOrEqual(0.85);
    expect(share).toBeGreaterThan(0.95);
    expect(width).toBeLessThanOrEqual(0.6);
    expect(width).toBeLessThan(0.3);
  });

  it("taken to 4 %, as a known time repeats, 90 % of the choices of temperature", () => {
    const { all, share, width } = choices(byTemperature, 0.04);
    expect(all).toBe(414);
    expect(share).toBeGreaterThanOrEqual(0.85);
    expect(width).toBeLessThanOrEqual(0.6);
  });

  it("and 80 % of dilution: the departure from a power is in the interval", () => {
    const { all, share } = choices(byDilution, 0.04);
    expect(all).toBe(45);
    expect(share).toBeGreaterThanOrEqual(0.8);
  });
});
