import { describe, expect, it } from "vitest";
import {
  compensate,
  describeCompensation,
  describeFactor,
  handbookTemperatureLaw,
  learn,
  predict,
  startKnowledge,
  type Factor,
} from "../../src/index.js";
import { de } from "../../src/texts/de.js";

const baseline = {
  timeS: 510,
  temperatureC: 20,
  dilution: "1+9",
  agitation: { everyS: 30 },
  gamma: 0.6,
} as const;
const row = (conditions: object, cause: string): Factor =>
  compensate(baseline, conditions).factors.find((each) => each.cause === cause) as Factor;

describe("a row of the answer", () => {
  it.each([
    ["temperature", { temperatureC: 18 }, 20, 18],
    ["temperature", {}, 20, 20],
    ["dilution", { dilution: { stockParts: 1, waterParts: 14 } }, "1+9", { stockParts: 1, waterParts: 14 }],
    ["agitation", { agitation: "continuous" }, { everyS: 30 }, "continuous"],
    ["use", { usedCm2PerL: 500 }, 0, 500],
    ["contrast", { gamma: 0.7 }, 0.6, 0.7],
    ["push", { pushStops: 2 }, undefined, 2],
  ])("of %s carries both sides as they were given", (cause, conditions, from, to) => {
    const found = row(conditions, cause);
    expect([found.from, found.to]).toEqual([from, to]);
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
  });

  it("keeps what its law rested on before a run moved it", () => {
    const run = { timeS: 900, temperatureC: 14, outcome: { kind: "good" } } as const;
    const basesOf = (laws: object): unknown => {
      const answer = predict(learn(startKnowledge({ timeS: 510, temperatureC: 20 }, { laws }), [run]), {
        temperatureC: 15,
      });
      const { basis, before } = answer.factors[1] as Factor;
      return [basis, before];
    };
    expect(basesOf({ temperature: handbookTemperatureLaw("metol-hydroquinone") })).toEqual([
      "own-runs",
      "handbook",
    ]);
    expect(basesOf({ temperature: { kind: "coefficient", ratio: 2, intervalC: 10 } })).toEqual([
      "own-runs",
      "given",
    ]);
    expect(basesOf({})).toEqual(["own-runs", "default"]);
  });
});

describe("describeFactor in German", () => {
  it("takes no word from what every object inherits", () => {
    const row = { cause: "agitation", value: 1.1, logSd: 0.1, basis: "given", sources: [] } as const;
    const odd = { ...row, from: "stand", to: "constructor" };
    expect(describeFactor(odd, de.answer)).toMatch(/^Bewegung, constructor statt Stand: /);
  });
  it.each([
    ["temperature", { temperatureC: 18.5 }, /^Temperatur, von 20 °C auf 18,5 °C: \d+ % länger, /],
    [
      "temperature",
      { temperatureC: { startC: 18, ambientC: 14, timeConstantS: 3600 } },
      /^Temperatur, von 20 °C auf ein Bad, dessen Temperatur sich ändert: /,
    ],
    ["dilution", { dilution: "1+14" }, /^Verdünnung, von 1\+9 auf 1\+14: /],
    ["dilution", { dilution: "stock" }, /^Verdünnung, von 1\+9 auf Stammlösung: /],
    ["agitation", { agitation: "stand" }, /^Bewegung, Stand statt alle 30 s: /],
    ["agitation", { agitation: { everyS: 45 } }, /^Bewegung, alle 45 s statt alle 30 s: /],
    ["use", { usedCm2PerL: 500 }, /^\S+, von 0 cm²\/l auf 500 cm²\/l: /],
    ["age", { ageH: 2.5 }, /^Alter, von 0 h auf 2 h 30 min: /],
    ["contrast", { gamma: 0.75 }, /^\S+, von 0,6 auf 0,75: /],
    ["push", { pushStops: 1 }, /^Push, 1 Blende: \d+ % länger, /],
    ["push", { pushStops: -1 }, /^Pull, 1 Blende: \d+ % kürzer, /],
    ["push", { pushStops: -1.5 }, /^Pull, 1½ Blenden: \d+ % kürzer, /],
    ["push", { pushStops: 2 / 3 }, /^Push, ⅔ Blende: \d+ % länger, /],
    ["push", { pushStops: 0.8 }, /^Push, 0,8 Blenden: \d+ % länger, /],
  ])("says %s with both sides", (cause, conditions, pattern) => {
    expect(describeFactor(row(conditions, cause), de.answer)).toMatch(pattern);
  });
});

describe("describeFactor", () => {
  it.each([
    [
      "temperature",
      { temperatureC: 18 },
      /^temperature, 20 °C to 18 °C: \d+ % more, give or take \d+ % \(general rule\)$/,
    ],
    [
      "temperature",
      { temperatureC: { startC: 18, ambientC: 14, timeConstantS: 3600 } },
      /^temperature, 20 °C to a bath that drifts: /,
    ],
    ["dilution", { dilution: { stockParts: 1, waterParts: 14 } }, /^dilution, 1\+9 to 1\+14: /],
    ["agitation", { agitation: "continuous" }, /^agitation, every 30 s to continuous: /],
    ["agitation", { agitation: { everyS: 30 } }, /^agitation, every 30 s: unchanged$/],
    ["use", { usedCm2PerL: 500 }, /^use, 0 cm²\/l to 500 cm²\/l: /],
    ["push", { pushStops: 2 }, /^push, 2 stops: /],
    ["push", { pushStops: -1 }, /^pull, 1 stop: /],
    ["push", { pushStops: -0.5 }, /^pull, 0.5 stops: /],
    ["age", { ageH: 504 }, /^age, (?:0 h to )?3 weeks: /],
    [
      "strength",
      { strength: { value: 1.2, logSd: 0.1, basis: "given" } },
      /^strength: 20 % more, give or take 18 % \(given\)$/,
    ],
  ])("says %s in words", (cause, conditions, words) => {
    expect(describeFactor(row(conditions, cause))).toMatch(words);
  });

  it.each([
    ["general rule", {}, "the known time itself, good to 7 %", "die bekannte Zeit selbst, ± 7 %"],
    [
      "own figure",
      { logSd: 0.5 },
      "the known time itself, good to a factor of 2.3",
      "die bekannte Zeit selbst, Faktor 2,3 mehr oder weniger",
    ],
    [
      "own runs",
      { logSd: 0.058, runs: 3 },
      "the known time itself, good to 10 % (own runs)",
      "die bekannte Zeit selbst, ± 10 % (eigene Entwicklungen)",
    ],
  ])("says how good the known time is by a %s, and that it changes nothing", (_, more, english, german) => {
    const [known] = compensate({ ...baseline, ...more }, {}).factors as [Factor];
    expect([describeFactor(known), describeFactor(known, de.answer)]).toEqual([english, german]);
  });

  it("says what a learned law rested on", () => {
    const said = {
      cause: "use",
      value: 1.1,
      logSd: 0,
      basis: "own-runs",
      before: "handbook",
      sources: [],
    } as const;
    expect(describeFactor(said)).toBe("use: 10 % more, give or take 0 % (own runs, at first handbook)");
  });

  it("keeps a word that its catalogue does not know", () => {
    const other = {
      cause: "hardness",
      value: 1.1,
      logSd: 0,
      basis: "given",
      sources: [],
      from: 5,
      to: 25,
    } as const;
    expect(describeFactor(other)).toBe("hardness: 10 % more, give or take 0 % (given)");
  });

  it("shows warnings and notes with the answer, and no pointer", () => {
    const lines = describeCompensation(compensate(baseline, { temperatureC: 31, pushStops: 1 }));
    expect(lines.some((line) => line.startsWith("Take care: "))).toBe(true);
    expect(lines.some((line) => line.startsWith("Note: "))).toBe(true);
    expect(lines.join("\n")).not.toMatch(/\[\/|\/conditions/);
  });
});
