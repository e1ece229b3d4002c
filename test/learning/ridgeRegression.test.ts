/* Learning against a general-purpose matrix library, number by number. All runs are invented. */
import { describe, expect, it } from "vitest";
import { Matrix, solve } from "ml-matrix";
import {
  type DevelopmentRun,
  startKnowledge,
  learn,
  genericTemperatureLaw,
  genericDilutionLaw,
  genericInteractionLaw,
  genericAgitationLaw,
  genericUseLaw,
  predict,
} from "../../src/index.js";

describe("learning against a ridge regression by a matrix library (ml-matrix, QR of the augmented rows)", () => {
  const R = 8.314462618e-3;
  const inverse = (celsius: number): number => 1 / (celsius + 273.15);
  const runs: readonly DevelopmentRun[] = [
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
      ageH: 20,
      outcome: { kind: "judged", timeRatio: 0.8, logSd: 0.12 },
    },
    { timeS: 555, temperatureC: 18.5, agitation: { everyS: 30 }, outcome: { kind: "good", logSd: 0.07 } },
  ];
  const dilutions = [10, 15, 5, 10, 10];
  const used = [0, 516, 900, 0, 0];
  const ages = [0, 1, 9, 20, 0];
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
    const share = (low: number, high: number, celsius: number): number =>
      Math.min(1, Math.max(0, (high - celsius) / (high - low)));
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
        // The departures over the gaps 13 to 16, 16 to 20 and 20 to 25 °C.
        -share(13, 16, run.temperatureC),
        -share(16, 20, run.temperatureC),
        1 - share(20, 25, run.temperatureC),
      ];
      const expected =
        Math.log(510) +
        -12 * x[6]! +
        energy * x[1]! +
        n * x[2]! +
        Math.log(rate(60) / rate(everyS[i]!)) +
        Math.log(1 + increase * portions);
      // 18.5 °C lies too near 20 °C for a departure of its own: what the bridge leaves is noise.
      const between = run.temperatureC === 18.5 ? 0.03 * Math.sqrt((1.5 * 2.5) / 4) : 0;
      const sd = Math.hypot(outcome.logSd, between);
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
      genericInteractionLaw.sdKJPerMol!,
      0.19 * Math.sqrt(Math.log(2)),
      0.19 * Math.sqrt(Math.log(1.5)),
      0.08 * Math.sqrt(Math.log(rate(30) / rate(60)) / staleLoss),
      ...[3, 4, 5].map((degrees) => 0.03 * Math.sqrt(degrees)),
    ];
    sds.forEach((sd, j) => {
      X.push(sds.map((_, k) => (k === j ? 1 / sd : 0)));
      y.push(0);
    });
    const matrix = new Matrix(X);
    const shift = solve(matrix, Matrix.columnVector(y)).to1DArray();
    const covariance = solve(matrix.transpose().mmul(matrix), Matrix.eye(13));
    const priors = [0, energy, n, staleLoss, increase, 0, -12, 0, 0, 0, 0, 0, 0];
    const named = known.parameters.map(({ parameter }) => parameter);
    const gap = (cause: string, i: number): string =>
      named.filter((name) => name.startsWith(`${cause} `))[i]!;
    // Along ln(concentration) the weaker dilution comes first.
    const order = [
      ...["baseline", "temperature", "dilution", "agitation", "use", "age", "interaction"],
      ...[gap("dilution", 1), gap("dilution", 0), gap("agitation", 0)],
      ...[0, 1, 2].map((i) => gap("temperature", i)),
    ].map((name) => named.indexOf(name));
    // No run has a strength or a push.
    expect(named).toHaveLength(15);
    // Departures count along the axis: toward stronger baths, and longer intervals.
    const sign = [1, 1, 1, 1, 1, 1, 1, -1, -1, 1, 1, 1, 1];
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
    const q = [1, warmth, Math.log(2), 0, 0, (4 / 24) ** 1.5, warmth, 0, 1, 0, -2 / 3, -1, 0];
    const answer = predict(known, question);
    const logTime = Math.log(510) + q.reduce((sum, each, j) => sum + each * (priors[j]! + shift[j]!), 0);
    expect(answer.timeS).toBeCloseTo(Math.exp(logTime), 6);
    const variance = Matrix.rowVector(q).mmul(covariance).mmul(Matrix.columnVector(q)).get(0, 0);
    // Beyond the weakest dilution of the runs the walk goes on, and between 13 and 16 °C it is a bridge.
    const beyond = 0.19 ** 2 * Math.log(20 / 15) + 0.03 ** 2 * (2 / 3);
    expect(Math.log(answer.highS / answer.timeS) / 1.6448536269514722).toBeCloseTo(
      Math.sqrt(variance + beyond),
      9,
    );
  });
});
