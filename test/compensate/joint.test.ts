import { describe, expect, it } from "vitest";
import { choleskyDiagonal } from "../../src/compensate/joint.js";
import {
  effect,
  ageFactor,
  agitationFactor,
  compensate,
  fitDilutionLaw,
  genericAgitationLaw,
  genericDilutionLaw,
  genericTemperatureLaw,
  genericUseLaw,
  learn,
  predict,
  startKnowledge,
  type AgeLaw,
  type Baseline,
  type Conditions,
  type InputError,
  type JointSpread,
  type Knowledge,
  type DevelopmentRun,
} from "../../src/index.js";
import { anyOf, thrown } from "../helpers.js";
const baseline: Baseline = {
  timeS: 510,
  temperatureC: 20,
  dilution: "1+9",
  agitation: { everyS: 60 },
  ageH: 4,
  logSd: 0.1,
  runs: 5,
};
const CAUSES = ["baseline", "temperature", "dilution", "agitation", "use", "age", "strength"];
const variance = (conditions: Conditions, knowledge: Knowledge, base: Baseline = baseline): number => {
  const { timeS, highS } = compensate(base, conditions, knowledge);
  return (Math.log(highS / timeS) / 1.6448536269514722) ** 2;
};
/** All pairs uncorrelated but one. */
const joint = (a: string, b: string, rho: number, timeS = 510): JointSpread => {
  const correlation = CAUSES.map((x) =>
    CAUSES.map((y) => (x === y ? 1 : (x === a && y === b) || (x === b && y === a) ? rho : 0)),
  );
  return {
    baseline: { ...baseline, timeS },
    parameters: CAUSES,
    correlation,
    unshared: choleskyDiagonal(correlation, CAUSES.length),
  };
};

describe("laws that were learned together", () => {
  const runs = 5;
  const laws: Knowledge = {
    temperature: { ...genericTemperatureLaw, runs },
    dilution: { ...genericDilutionLaw, scatterLogSd: 0, runs },
    agitation: { ...genericAgitationLaw, runs },
    use: { ...genericUseLaw, runs },
    age: { kind: "slowing", perRootH: -0.1, sdPerRootH: 0.05, runs },
  };
  const weaker = { cause: "strength", value: 1.25, logSd: 0.2, basis: "own-runs", sources: [] } as const;
  // Conditions under which each number acts with the sign given: up in the cold, when thinner, when still,
  // when used, when old.
  const acts: readonly (readonly [cause: string, conditions: Conditions, sign: number])[] = [
    ["baseline", {}, 1],
    ["temperature", { temperatureC: 15 }, 1],
    ["temperature", { temperatureC: 25 }, -1],
    ["dilution", { dilution: "1+19" }, 1],
    ["dilution", { dilution: "1+4" }, -1],
    ["agitation", { agitation: { everyS: 120 } }, 1],
    ["agitation", { agitation: "continuous" }, -1],
    ["use", { usedCm2PerL: 1000 }, 1],
    ["age", { ageH: 16 }, 1],
    ["age", { ageH: 1 }, -1],
    ["strength", { strength: { ...weaker, slope: 0.2 } }, 1],
    ["strength", { strength: { ...weaker, value: 0.8, slope: -0.2 } }, -1],
  ];
  it("use: a bath less used than the known one acts the other way", () => {
    const worn = { ...baseline, usedCm2PerL: 1000 };
    const conditions = { temperatureC: 15, usedCm2PerL: 0 };
    const rows = compensate(worn, conditions, laws).factors;
    const sd = (cause: string): number => rows.find((row) => row.cause === cause)!.logSd;
    const alone = rows.reduce((sum, row) => sum + row.logSd ** 2, 0);
    expect(sd("use")).toBeGreaterThan(0.01);
    expect(variance(conditions, { ...laws, joint: joint("temperature", "use", -0.4) }, worn)).toBeCloseTo(
      alone + 0.8 * sd("temperature") * sd("use"),
      12,
    );
  });
  it("another base time stands apart, and the learned laws stay together", () => {
    const other = { ...baseline, timeS: 600 };
    const conditions = { temperatureC: 15, dilution: "1+19" };
    const rows = compensate(other, conditions, laws).factors;
    const sd = (cause: string): number => rows.find((row) => row.cause === cause)!.logSd;
    const alone = rows.reduce((sum, row) => sum + row.logSd ** 2, 0);
    expect(
      variance(conditions, { ...laws, joint: joint("baseline", "temperature", -0.4) }, other),
    ).toBeCloseTo(alone, 12);
    expect(
      variance(conditions, { ...laws, joint: joint("temperature", "dilution", -0.4) }, other),
    ).toBeCloseTo(alone - 0.8 * sd("temperature") * sd("dilution"), 12);
  });
  for (const [one, first, s] of acts)
    for (const [other, second, t] of acts.filter(([cause]) => CAUSES.indexOf(cause) > CAUSES.indexOf(one)))
      it(`${one} (${s}) and ${other} (${t}): adds 2·ρ·sd·sd with the sign of their slopes`, () => {
        const conditions = { ...first, ...second };
        const rows = compensate(baseline, conditions, laws).factors;
        // Beside the spread of its number agitation has its departure from the curve, which nothing shares.
        const bare = { ...laws, agitation: { ...laws.agitation!, sdStaleLoss: 0 } };
        const departure = compensate(baseline, conditions, bare).factors.find(
          (row) => row.cause === "agitation",
        );
        const sd = (cause: string): number => {
          const { logSd } = rows.find((row) => row.cause === cause)!;
          return cause === "agitation" ? Math.sqrt(logSd ** 2 - departure!.logSd ** 2) : logSd;
        };
        const alone = rows.reduce((sum, row) => sum + row.logSd ** 2, 0);
        expect(variance(conditions, laws)).toBeCloseTo(alone, 12);
        expect(variance(conditions, { ...laws, joint: joint(one, other, -0.4) })).toBeCloseTo(
          alone - 0.8 * s * t * sd(one) * sd(other),
          12,
        );
      });

  it("leaves a base time out that was not learned with them, and causes that the spread does not know", () => {
    const conditions = { temperatureC: 15 };
    expect(variance(conditions, { ...laws, joint: joint("baseline", "temperature", -0.9, 500) })).toBe(
      variance(conditions, laws),
    );
    // Written by hand, without a schema, the joint spread is a field that is read.
    const { cautions } = compensate(baseline, conditions, { joint: joint("baseline", "temperature", -0.9) });
    expect(cautions.map(({ code }) => code)).not.toContain("unknown-field");
    expect(
      variance(conditions, {
        ...laws,
        joint: { baseline, parameters: ["baseline"], correlation: [[1]], unshared: [1] },
      }),
    ).toBe(variance(conditions, laws));
  });
  it("leaves out whatever no run has taught: a law put in place of a learned one, a generic one, a time and a strength as given", () => {
    const together = joint("baseline", "temperature", -0.9);
    for (const temperature of [
      { kind: "coefficient", ratio: 2, intervalC: 10, sdRatio: 0.2 },
      { ...genericTemperatureLaw, published: true },
      { ...genericTemperatureLaw, runs: 0 },
      undefined,
    ] as const) {
      const replaced = { ...laws, temperature } as Knowledge;
      expect(variance({ temperatureC: 15 }, { ...replaced, joint: together })).toBe(
        variance({ temperatureC: 15 }, replaced),
      );
    }
    const told: Baseline = { timeS: 510, temperatureC: 20, logSd: 0.1 };
    expect(variance({ temperatureC: 15 }, { ...laws, joint: together }, told)).toBe(
      variance({ temperatureC: 15 }, laws, told),
    );
    const given = { strength: { ...weaker, basis: "given" } } as const;
    expect(variance(given, { ...laws, joint: joint("baseline", "strength", -0.9) })).toBe(
      variance(given, laws),
    );
  });
  it("leaves the scatter of single times about a power of dilution in the sum", () => {
    const exact = { kind: "power", exponent: 0.8, sd: 0.2, scatterLogSd: 0, runs } as const;
    const dilution = { ...exact, scatterLogSd: 0.1 };
    const conditions = { dilution: "1+14" };
    const alone = variance(conditions, { dilution });
    expect(alone).toBeCloseTo(0.01 + effect("dilution", "1+9", "1+14", dilution).logSd ** 2, 12);
    expect(variance(conditions, { dilution, joint: joint("baseline", "dilution", -0.9) })).toBeCloseTo(
      alone - 1.8 * 0.1 * effect("dilution", "1+9", "1+14", exact).logSd,
      12,
    );
    // At an exponent of 0 the factor is 1 and tells no direction; the dilutions do. Without a spread the
    // exponent has that of a given law.
    for (const [to, sign] of [
      ["1+19", 1],
      ["1+4", -1],
    ] as const) {
      const flat = { kind: "power", exponent: 0, scatterLogSd: 0, runs } as const;
      const moved = 2 * -0.9 * 0.1 * sign * effect("dilution", "1+9", to, flat).logSd;
      expect(
        variance({ dilution: to }, { dilution: flat, joint: joint("baseline", "dilution", -0.9) }),
      ).toBeCloseTo(variance({ dilution: to }, { dilution: flat }) + moved, 12);
    }
  });
  it("tells the way by temperatures and use where the number is held at 0 and the factor is 1", () => {
    const temperature = { kind: "arrhenius", activationEnergyKJPerMol: 0, sdKJPerMol: 10, runs } as const;
    const use = { increase: 0, perCm2PerL: 516, growth: "linear", sdIncrease: 0.1, runs } as const;
    const acts = [
      ["temperature", { temperatureC: 14 }, 1],
      ["temperature", { temperatureC: 26 }, -1],
      ["use", { usedCm2PerL: 1032 }, 1],
    ] as const;
    for (const [cause, conditions, sign] of acts) {
      const known = { temperature, use };
      const { factors } = compensate(baseline, conditions, known);
      const { value, logSd } = factors.find((row) => row.cause === cause)!;
      expect(value).toBe(1);
      expect(variance(conditions, { ...known, joint: joint("baseline", cause, -0.9) })).toBeCloseTo(
        variance(conditions, known) - sign * 1.8 * 0.1 * logSd,
        12,
      );
    }
  });
  it("leaves what is unknown of stand in the sum, in which more loss between agitations asks less of it", () => {
    const agitation = { staleLoss: 0.73, staleTimeS: 75, runs };
    const knowledge = { agitation, joint: joint("baseline", "agitation", -0.9) };
    // The learned part, by differences: 0.3 is the spread in staleLoss of a law without one.
    const more = { ...agitation, staleLoss: 0.7301, shape: 0.73 };
    for (const [from, to] of [
      [{ everyS: 60 }, "stand"],
      ["stand", { everyS: 60 }],
    ] as const) {
      const learned =
        0.3 * Math.log(agitationFactor(from, to, more) / agitationFactor(from, to, agitation)) * 1e4;
      expect(Math.sign(learned)).toBe(to === "stand" ? -1 : 1);
      const base = { ...baseline, agitation: from };
      const alone = variance({ agitation: to }, { agitation }, base);
      // Along the curve from continuous to 60 s: ln(factor)/loss.
      const departure = (0.08 ** 2 * Math.abs(learned)) / 0.3;
      expect(alone).toBeCloseTo(0.01 + learned ** 2 + 0.16 + departure, 5);
      const together = { ...knowledge, joint: { ...knowledge.joint, baseline: base } };
      expect(variance({ agitation: to }, together, base)).toBeCloseTo(alone - 1.8 * 0.1 * learned, 5);
    }
  });
  // An invented workshop in a mountain hut: a table of three rows, and four negatives that came out right at
  // 1+19.
  it("gives a dilution between two known ones the variance of a bridge that no run at another dilution takes away", () => {
    const { law } = fitDilutionLaw([
      { dilution: "1+9", timeS: 360 },
      { dilution: "1+19", timeS: 700 },
      { dilution: "1+29", timeS: 930 },
    ]);
    const start = startKnowledge(
      { timeS: 510, temperatureC: 20, dilution: "1+9" },
      { laws: { dilution: law } },
    );
    const run = { timeS: 950, temperatureC: 20, dilution: "1+19", outcome: { kind: "good" } } as const;
    const known = learn(
      start,
      [1, 2, 3, 4].map((id) => ({ ...run, id: String(id) })),
    );
    const { timeS, highS, factors } = predict(known, { dilution: "1+14" });
    const variance = (Math.log(highS / timeS) / 1.6448536269514722) ** 2;
    const [way, gap] = [Math.log(1.5), Math.log(2)];
    const bridge = (0.19 ** 2 * way * (gap - way)) / gap;
    // The base, the exponent and the gap from 1+9 to 1+19, of which ln 1.5/ln 2 is gone; toward stronger baths.
    const names = ["baseline", "dilution", known.joint.parameters.find((name) => name.includes(" to "))!];
    const slopes = [1, way, -way / gap];
    const shares = names.map(
      (name, i) => slopes[i]! * known.parameters.find((one) => one.parameter === name)!.sd,
    );
    const learned = shares.reduce(
      (sum, a, i) =>
        sum +
        shares.reduce(
          (part, b, j) =>
            part +
            a *
              b *
              known.joint.correlation[known.joint.parameters.indexOf(names[i]!)]![
                known.joint.parameters.indexOf(names[j]!)
              ]!,
          0,
        ),
      0,
    );
    expect(factors[2]!.basis).toBe("own-runs");
    expect(variance).toBeCloseTo(learned + bridge, 12);
    // At the dilution of the runs it is known better than beside it.
    const there = predict(known, { dilution: "1+19" });
    expect(there.highS / there.timeS).toBeLessThan(highS / timeS);
  });
  it("takes the age from 0 where the baseline is silent", () => {
    const young: Baseline = { timeS: 510, temperatureC: 20, logSd: 0.1, runs };
    const knowledge = { ...laws, joint: { ...joint("baseline", "age", 0.5), baseline: young } };
    expect(variance({ ageH: 1 }, knowledge, young)).toBeCloseTo(0.01 + 0.0025 + 2 * 0.5 * 0.1 * 0.05, 12);
  });
  it("refuses wrong correlations: not symmetric, not of unit diagonal, not positive definite, rounded", () => {
    const good = joint("baseline", "temperature", -0.998);
    const refused = (correlation: unknown): unknown => {
      try {
        compensate(baseline, { temperatureC: 15 }, anyOf({ ...laws, joint: { ...good, correlation } }));
      } catch (error) {
        return (error as InputError).path;
      }
      return "taken";
    };
    const changed = (i: number, j: number, value: number): unknown =>
      good.correlation.map((row, k) => row.map((each, l) => (k === i && l === j ? value : each)));
    expect(refused(good.correlation)).toBe("taken");
    expect(refused(JSON.parse(JSON.stringify(good.correlation)))).toBe("taken");
    expect(refused([])).toBe("/knowledge/joint/correlation/0/0");
    expect(refused(undefined)).toBe("/knowledge/joint/correlation");
    expect(refused(changed(0, 1, 0.5))).toBe("/knowledge/joint/correlation/1/0");
    expect(refused(changed(2, 2, 0.9))).toBe("/knowledge/joint/correlation/2/2");
    expect(refused(changed(0, 1, 1.5))).toBe("/knowledge/joint/correlation/0/1");
    const all = (value: (rho: number) => number): unknown =>
      good.correlation.map((row, i) => row.map((rho, j) => (i === j ? 1 : value(rho))));
    expect(refused(all(() => -1))).toBe("/knowledge/joint/correlation");
    // Rounded to two digits, −0.998 would be −1 and the interval of no width.
    expect(refused(all((rho) => Math.round(rho * 100) / 100))).toBe("/knowledge/joint/correlation");
  });
  it("refuses what a newer version learned", () => {
    const start = startKnowledge({ timeS: 510, temperatureC: 20 });
    expect(compensate(start.baseline, {}, start).timeS).toBe(510);
    expect(() => compensate(start.baseline, {}, anyOf({ ...start, schema: 2 }))).toThrow(
      new RangeError(
        "compensate: knowledge.schema must be at most 1, the newest version that this package reads (or update it), got 2",
      ),
    );
  });
  it("keeps the covariance through storage and a base time that was rounded to a second, and says where it does not", () => {
    const runs = [12, 13, 14, 15, 16].map((temperatureC) => ({
      timeS: 510 * Math.exp(0.07 * (20 - temperatureC)),
      temperatureC,
      outcome: { kind: "good" },
    })) as readonly DevelopmentRun[];
    const known = learn(startKnowledge({ timeS: 510, temperatureC: 20 }), runs);
    const width = (base: Baseline, knowledge: Knowledge): number => {
      const { lowS, highS } = compensate(base, { temperatureC: 14 }, knowledge);
      return Math.log(highS / lowS);
    };
    const exact = width(known.baseline, known);
    const stored = JSON.parse(JSON.stringify(known)) as typeof known;
    expect(width(stored.baseline, stored)).toBe(exact);
    const rounded = { ...known.baseline, timeS: Math.round(known.baseline.timeS) };
    expect(width(rounded, known)).toBeCloseTo(exact, 9);
    const other = { ...known.baseline, timeS: known.baseline.timeS * 1.1 };
    expect(width(other, known)).toBeGreaterThan(2 * exact);
    const codes = (base: Baseline): readonly string[] =>
      compensate(base, { temperatureC: 14 }, known).cautions.map(({ code }) => code);
    expect(codes(rounded)).not.toContain("other-baseline");
    expect(codes(other)).toContain("other-baseline");
  });
  it("says how many runs a learned base time stands on", () => {
    expect(compensate({ ...baseline, runs: 3 }, {}).factors[0]).toMatchObject({
      basis: "own-runs",
      runs: 3,
      sources: [],
    });
    expect(compensate({ ...baseline, runs: 3 }, {}).cautions.map(({ code }) => code)).not.toContain(
      "unknown-field",
    );
  });
});

describe("a bath that slows with the root of its age", () => {
  const law: AgeLaw = { kind: "slowing", perRootH: 0.1 };
  it("takes e^(perRootH·√age), and after 25 h only 8 % more for each further 25 h", () => {
    expect(ageFactor(0, 4, law)).toBeCloseTo(Math.exp(0.2), 12);
    expect(ageFactor(0, 25, law)).toBeCloseTo(Math.exp(0.5), 12);
    // x = 0.08 × 50/25 - 0.08, and 0.8 of it.
    expect(ageFactor(0, 50, law)).toBeCloseTo(ageFactor(0, 25, law) * Math.exp(0.064), 12);
    // 100 h are four times what it covers: 0.8 × (0.32 - 0.08) slower.
    expect(ageFactor(0, 100, law)).toBeCloseTo(ageFactor(0, 25, law) * Math.exp(0.192), 12);
    expect(ageFactor(0, 4, { kind: "slowing", perRootH: -0.1 })).toBeCloseTo(Math.exp(-0.2), 12);
    expect(ageFactor(0, 0, law)).toBe(1);
  });
  it("has a spread of 0.1 for the root of an hour unless it says otherwise", () => {
    expect(effect("age", 0, 4, law).logSd).toBeCloseTo(0.2, 12);
    expect(effect("age", 16, 4, { ...law, sdPerRootH: 0.03 }).logSd).toBeCloseTo(0.06, 12);
    // Past 25 h the number tells nothing: x = 0.32 - 0.08, and 0.75 of it.
    expect(effect("age", 100, 25, law).logSd).toBeCloseTo(Math.hypot(0.08, 0.18), 12);
  });
  it("refuses values out of range, by message", () => {
    expect(() => ageFactor(0, 1, { kind: "slowing", perRootH: 2 })).toThrow(
      new RangeError("ageFactor: law.perRootH must be from -1 to 1, got 2"),
    );
    expect(() => effect("age", 0, 1, { ...law, sdPerRootH: 4 }).logSd).toThrow(
      new RangeError("effect: law.sdPerRootH must be from 0 to 3, got 4"),
    );
  });
});

describe("a joint spread that storage lost", () => {
  const baseline = { timeS: 510, temperatureC: 20 };
  const start = startKnowledge(baseline);
  const { joint } = start;
  it("is refused by its place", () => {
    expect(thrown(() => compensate(baseline, {}, anyOf({ joint: null })))).toBe(
      "TypeError: compensate: knowledge.joint must be an object, got null",
    );
    expect(thrown(() => compensate(baseline, {}, anyOf({ joint: {} })))).toBe(
      "TypeError: compensate: knowledge.joint.parameters is missing: an array",
    );
    expect(thrown(() => compensate(baseline, {}, anyOf({ joint: { parameters: joint.parameters } })))).toBe(
      "TypeError: compensate: knowledge.joint.correlation is missing: an array",
    );
  });
  it("is refused where an offset has no name", () => {
    const offsets = [{ parameter: {}, value: 0, sd: 0.1 }];
    expect(thrown(() => compensate(baseline, {}, anyOf({ joint: { ...joint, offsets } })))).toBe(
      "TypeError: compensate: knowledge.joint.offsets[0].parameter must be text, got an object",
    );
  });
  it("is refused when its causes are an endless list of holes", () => {
    const parameters = new Array<string>(2 ** 32 - 1);
    expect(thrown(() => compensate(baseline, {}, anyOf({ joint: { ...joint, parameters } })))).toBe(
      "RangeError: compensate: knowledge.joint.parameters must hold at most 100000, got 4294967295",
    );
  });
});
