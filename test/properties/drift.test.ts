/* Laws of drifting baths, growth and combined estimates, over all laws and logs that the package takes. */
import { describe, expect } from "vitest";
import {
  appearanceFactor,
  combineEstimates,
  compensate,
  developUntil,
  equivalentTime,
  gammaAt,
  ownUseFactor,
  rateFunction,
  remainingTime,
  startTemperatureFor,
  temperatureFactor,
  timeForGamma,
  timeFromAppearance,
  type TemperatureLaw,
  type TemperatureLog,
} from "../../src/index.js";
import { fc, test, real } from "../property.js";
import { arrheniusLaw, coefficientLaw, temperatureC, temperatureLaw } from "./generators.js";

/**
 * From two readings to eight, seconds or hours apart, level stretches and the ends of the scale among them.
 */
const log: fc.Arbitrary<TemperatureLog> = fc
  .array(
    fc.record({
      gapS: fc.oneof(fc.constantFrom(1, 60), real(0.5, 5000)),
      temperatureC: fc.oneof(fc.constantFrom(18, 20), temperatureC),
    }),
    {
      minLength: 2,
      maxLength: 8,
    },
  )
  .map((steps) => {
    let timeS = -steps[0]!.gapS;
    return steps.map(({ gapS, temperatureC: c }) => ({ timeS: (timeS += gapS), temperatureC: c }));
  });
/** A log as cool and warm as darkrooms get, for the functions that have to solve for a time. */
const mild: fc.Arbitrary<TemperatureLog> = log.map((readings) =>
  readings.map((one) => ({ ...one, temperatureC: 10 + one.temperatureC / 5 })),
);
/**
 * The same with no reading sooner after another than a 32nd of the whole, so that no swing is shorter than a
 * sixteenth: developUntil knows a forecast only by looking at it, and says that it can miss what is much
 * shorter than that.
 */
const gentle: fc.Arbitrary<TemperatureLog> = mild.map((readings) => {
  const whole = readings[readings.length - 1]!.timeS;
  const least = whole / Math.max(1, 32 - readings.length);
  return readings.map((one, i) => ({ ...one, timeS: one.timeS + i * least }));
});
const share = real(0.01, 0.99);
const lineAt = (readings: TemperatureLog, timeS: number): number => {
  const i = Math.max(
    1,
    readings.findIndex((one) => one.timeS >= timeS),
  );
  const from = readings[i - 1]!;
  const to = readings[i]!;
  return (
    from.temperatureC +
    ((to.temperatureC - from.temperatureC) * (timeS - from.timeS)) / (to.timeS - from.timeS)
  );
};
const cutAt = (readings: TemperatureLog, part: number): number | undefined => {
  const first = readings[0]!.timeS;
  const timeS = first + part * (readings[readings.length - 1]!.timeS - first);
  return readings.some((one) => Math.abs(one.timeS - timeS) < 1e-3) ? undefined : timeS;
};
const close = (found: number, expected: number, relative: number): void => {
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
};

describe("equivalent time", () => {
  test.prop([temperatureLaw, temperatureC, temperatureC, real(1, 1e6)])(
    "of a constant log is the constant-temperature time",
    (law, at, reference, timeS) => {
      const steady = [
        { timeS: 0, temperatureC: at },
        { timeS, temperatureC: at },
      ];
      close(equivalentTime(steady, reference, law), timeS / temperatureFactor(reference, at, law), 1e-11);
    },
  );
  test.prop([temperatureLaw, log, share])(
    "does not change when a reading on the line is added, nor when the log is split there",
    (law, readings, part) => {
      const timeS = cutAt(readings, part);
      fc.pre(timeS !== undefined);
      const extra = { timeS, temperatureC: Math.min(100, Math.max(0, lineAt(readings, timeS))) };
      const before = [...readings.filter((one) => one.timeS < timeS), extra];
      const after = [extra, ...readings.filter((one) => one.timeS > timeS)];
      const whole = equivalentTime(readings, 20, law);
      close(equivalentTime([...before, ...after.slice(1)], 20, law), whole, 1e-9);
      close(equivalentTime(before, 20, law) + equivalentTime(after, 20, law), whole, 1e-9);
    },
  );
  test.prop([temperatureLaw, log, fc.nat(7), real(0.01, 30)])(
    "grows with every warmer reading",
    (law, readings, which, warmer) => {
      const i = which % readings.length;
      const raised = readings.map((one, j) =>
        j === i ? { ...one, temperatureC: Math.min(100, one.temperatureC + warmer) } : one,
      );
      expect(equivalentTime(raised, 20, law)).toBeGreaterThanOrEqual(
        equivalentTime(readings, 20, law) * (1 - 1e-12),
      );
    },
  );
  test.prop([
    fc.oneof(
      arrheniusLaw.filter((law) => law.activationEnergyKJPerMol === 0 || law.activationEnergyKJPerMol > 6.3),
      coefficientLaw,
    ),
    log,
  ])(
    "is never less than the mean temperature says, where the rate is convex in temperature (Jensen's inequality)",
    (law, readings) => {
      // e^(−E/RT) is convex where E > 2RT: 6.2 kJ/mol at 100 °C. So a bath that drifts does more than its
      // mean temperature tells.
      const spanS = readings[readings.length - 1]!.timeS - readings[0]!.timeS;
      const meanC =
        readings
          .slice(1)
          .reduce(
            (sum, one, i) =>
              sum + ((one.temperatureC + readings[i]!.temperatureC) / 2) * (one.timeS - readings[i]!.timeS),
            0,
          ) / spanS;
      expect(equivalentTime(readings, 20, law)).toBeGreaterThanOrEqual(
        spanS * rateFunction(20, law)(Math.min(100, Math.max(0, meanC))) * (1 - 1e-9),
      );
    },
  );
  test.prop([temperatureLaw, log, temperatureC, temperatureC])(
    "at one reference is that at another times the factor between them",
    (law, readings, a, b) => {
      close(
        equivalentTime(readings, b, law),
        equivalentTime(readings, a, law) * temperatureFactor(a, b, law),
        1e-9,
      );
    },
  );
});

describe("developUntil", () => {
  test.prop([temperatureLaw, gentle])("inverts equivalentTime", (law, readings) => {
    const last = readings[readings.length - 1]!.timeS;
    const equivalentS = equivalentTime(readings, 20, law);
    const found = developUntil({ equivalentS, referenceC: 20, law, temperatureAt: readings });
    // In clock time the tolerance of the integral is that of the work over the rate at the end.
    const slack = (1e-9 * equivalentS) / rateFunction(20, law)(readings[readings.length - 1]!.temperatureC);
    expect(Math.abs(found - last)).toBeLessThanOrEqual(slack + 1e-9 * last);
  });
  test.prop([temperatureLaw, real(10, 30), real(0, 40), real(60, 1e5), real(1, 1e4)])(
    "takes longer for more, and adds up",
    (law, startC, ambientC, timeConstantS, wanted) => {
      const temperatureAt = { startC, ambientC, timeConstantS };
      const ask = { referenceC: 20, law, temperatureAt };
      const half = developUntil({ ...ask, equivalentS: wanted / 2 });
      const whole = developUntil({ ...ask, equivalentS: wanted });
      expect(whole).toBeGreaterThan(half);
      close(developUntil({ ...ask, equivalentS: wanted / 2, fromS: half }), whole, 1e-8);
    },
  );
});

describe("remainingTime", () => {
  test.prop([temperatureLaw, mild, real(0.1, 3)])(
    "reaches 0 exactly at the target and is never below",
    (law, readings, part) => {
      const doneS = equivalentTime(readings, 20, law);
      const at = remainingTime({ targetS: doneS, referenceC: 20, law, log: readings });
      expect(at.remainingS).toBe(0);
      expect(at.fraction).toBe(1);
      const { remainingS, fraction } = remainingTime({
        targetS: doneS * part,
        referenceC: 20,
        law,
        log: readings,
      });
      expect(remainingS).toBeGreaterThanOrEqual(0);
      expect(remainingS > 0).toBe(fraction < 1);
    },
  );
  test.prop([arrheniusLaw, real(60, 900), real(12, 26)])(
    "does not change while a steady bath does what was forecast",
    (law, nowS, at) => {
      const targetS = 1000;
      const steady = [
        { timeS: 0, temperatureC: at },
        { timeS: nowS, temperatureC: at },
      ];
      const { remainingS, fraction } = remainingTime({ targetS, referenceC: 20, law, log: steady });
      if (fraction < 1) close(nowS + remainingS, targetS * temperatureFactor(20, at, law), 1e-9);
    },
  );
});

describe("startTemperatureFor", () => {
  test.prop([
    fc.oneof(arrheniusLaw, coefficientLaw),
    real(60, 1200),
    real(15, 25),
    real(5, 35),
    real(1800, 20000),
  ])(
    "makes the drifting bath end when the steady one would",
    (law: TemperatureLaw, timeS, targetC, ambientC, timeConstantS) => {
      const { startC } = startTemperatureFor({ timeS, targetC, ambientC, timeConstantS, law });
      const temperatureAt = { startC, ambientC, timeConstantS };
      close(developUntil({ equivalentS: timeS, referenceC: targetC, law, temperatureAt }), timeS, 1e-8);
      expect((startC - targetC) * (ambientC - targetC)).toBeLessThanOrEqual(0);
    },
  );
});

describe("ownUseFactor", () => {
  test.prop([
    real(0, 0.3),
    fc.constantFrom("linear" as const, "compound" as const),
    real(0, 1000),
    real(200, 2000),
    real(1, 2),
  ])("grows with the load and is 1 without one", (increase, growth, areaCm2, volumeMl, more) => {
    const use = { increase, perCm2PerL: 516.128, growth, areaCm2, volumeMl };
    const factor = ownUseFactor(use);
    expect(factor).toBeGreaterThanOrEqual(1 - 1e-12);
    expect(ownUseFactor({ ...use, areaCm2: areaCm2 * more })).toBeGreaterThanOrEqual(factor * (1 - 1e-12));
  });
});

describe("growth", () => {
  const growth = fc.record({
    gammaInfinity: real(0.1, 1000),
    ratePerS: real(1e-5, 1),
    appearanceS: real(0, 1000),
  });
  test.prop([growth, real(0, 12)])("timeForGamma inverts gammaAt", (law, constants) => {
    const timeS = law.appearanceS + constants / law.ratePerS;
    // Near the limit a figure of γ lost in rounding is e^(constants) figures of time.
    const slack = (1e-15 * Math.exp(constants)) / law.ratePerS + 1e-9 * timeS;
    expect(Math.abs(timeForGamma(gammaAt(timeS, law), law) - timeS)).toBeLessThanOrEqual(slack);
  });
  test.prop([growth, real(0, 5000), real(0, 5000)])(
    "never falls with time and never passes the limit",
    (law, timeS, more) => {
      expect(gammaAt(timeS + more, law)).toBeGreaterThanOrEqual(gammaAt(timeS, law));
      expect(gammaAt(timeS + more, law)).toBeLessThanOrEqual(law.gammaInfinity);
    },
  );
  test.prop([real(0.2, 0.9), real(0.2, 0.9), real(0.2, 0.9)])(
    "in compensate composes: from a to b to c is from a to c",
    (a, b, c) => {
      const factor = (from: number, to: number): number =>
        compensate({ timeS: 600, temperatureC: 20, gamma: from }, { gamma: to }).timeS / 600;
      close(factor(a, b) * factor(b, c), factor(a, c), 1e-12);
    },
  );
});

describe("estimates", () => {
  const estimate = fc
    .record({ timeS: real(10, 1e5), logSd: fc.oneof(fc.constant(0), real(0.001, 1)) })
    .map(({ timeS, logSd }) => ({
      timeS,
      lowS: timeS / Math.exp(1.6448536269514722 * logSd),
      highS: timeS * Math.exp(1.6448536269514722 * logSd),
    }));
  const logSdOf = ({ lowS, highS }: { readonly lowS: number; readonly highS: number }): number =>
    Math.log(highS / lowS) / 2 / 1.6448536269514722;
  test.prop([estimate, estimate])(
    "combined lie between, and are never wider than the narrower unless they lie apart",
    (a, b) => {
      const both = combineEstimates(a, b);
      if (both.apart <= 1)
        expect(both.highS / both.lowS).toBeLessThanOrEqual(
          Math.min(a.highS / a.lowS, b.highS / b.lowS) * (1 + 1e-9),
        );
      // Beyond one standard deviation the interval is that of the weighted mean times the root of their chi-square,
      // as well as spreads below a ten-thousandth can be read back from an interval.
      else if (Math.min(logSdOf(a), logSdOf(b)) > 1e-4)
        expect(Math.log(both.highS / both.timeS) / 1.6448536269514722).toBeCloseTo(
          both.apart / Math.hypot(1 / logSdOf(a), 1 / logSdOf(b)),
          8,
        );
      expect(both.timeS).toBeGreaterThanOrEqual(Math.min(a.timeS, b.timeS) * (1 - 1e-12));
      expect(both.timeS).toBeLessThanOrEqual(Math.max(a.timeS, b.timeS) * (1 + 1e-12));
      close(combineEstimates(b, a).timeS, both.timeS, 1e-12);
    },
  );
  test.prop([real(0.1, 1e4), real(1, 1000)])("appearance and total invert", (appearanceS, factor) => {
    const totalS = timeFromAppearance({ appearanceS, factor });
    fc.pre(totalS / appearanceS >= 1 && totalS / appearanceS <= 1000);
    close(appearanceFactor({ appearanceS, totalS }), factor, 1e-12);
  });
});

describe("compensate with a log", () => {
  test.prop([fc.oneof(arrheniusLaw, coefficientLaw), mild, real(60, 3600)])(
    "is the clock time at which the log has done the baseline's work",
    (law, readings, timeS) => {
      const held = [...readings, { timeS: 1e6, temperatureC: readings[readings.length - 1]!.temperatureC }];
      const answer = compensate(
        { timeS, temperatureC: 20 },
        { temperatureC: readings },
        { temperature: law },
      );
      fc.pre(answer.timeS < 9e5);
      const until = readings[0]!.timeS + answer.timeS;
      const cut = [
        ...held.filter((one) => one.timeS < until),
        { timeS: until, temperatureC: lineAt(held, until) },
      ];
      fc.pre(cut.length > 1);
      close(equivalentTime(cut, 20, law), timeS, 1e-8);
    },
  );
});
