/*
 * Simulated photographers. Each world is drawn from the prior; runs with stated noise; then one question
 * under other conditions. Intervals and use reach as far as their laws serve: three minutes between
 * agitations, fifteen rolls in a litre.
 */
import { describe, expect, it } from "vitest";
import {
  genericAgitationLaw,
  genericDilutionLaw,
  genericTemperatureLaw,
  genericUseLaw,
  learn,
  nextTest,
  predict,
  startKnowledge,
  type LearnedKnowledge,
  type Run,
} from "../../src/index.js";

/**
 * A small generator of uniform numbers (mulberry32, public domain), so that every run of this file sees the
 * same worlds.
 */
function uniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const R = 8.314462618e-3;
const NOISE = 0.07;
const WORLDS = 500;
// The age law of these worlds is the one that is told: the generic one moves little within four hours.
const start = startKnowledge(
  { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 30 } },
  { laws: { age: { kind: "slowing", perRootH: 0, sdPerRootH: 0.1 } } },
);

type Where = Required<Pick<Run, "temperatureC" | "dilution" | "agitation" | "usedCm2PerL" | "ageH">>;

/**
 * How agitation and use act in a world: their numbers scale the curves of the prior, as learning takes it; or
 * each number makes a curve of its own, the mean rate of a layer that goes stale and what use adds, which no
 * scaled curve is.
 */
type Curves = "scaled" | "their own";

/**
 * A world: true numbers from the prior, those that can be no law drawn again; and the true time of any
 * conditions, written out anew.
 */
function world(u: () => number, curves: Curves) {
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - u())) * Math.cos(2 * Math.PI * u());
  const within = (mean: number, sd: number, low: number, high: number): number => {
    for (;;) {
      const drawn = mean + sd * normal();
      if (drawn >= low && drawn <= high) return drawn;
    }
  };
  const truth = {
    base: 510 * Math.exp(0.2 * normal()),
    energy: within(genericTemperatureLaw.activationEnergyKJPerMol, genericTemperatureLaw.sdKJPerMol!, 0, 200),
    n: within(genericDilutionLaw.exponent, genericDilutionLaw.sd!, 0, 3),
    loss: within(
      genericAgitationLaw.staleLoss,
      genericAgitationLaw.sdStaleLoss!,
      0,
      curves === "scaled" ? 10 : 0.99,
    ),
    increase: within(genericUseLaw.increase, genericUseLaw.sdIncrease!, 0, 10),
    slowing: within(0, 0.1, -1, 1),
  };
  const draw = (): Where => ({
    temperatureC: 12 + 14 * u(),
    dilution: { stockParts: 1, waterParts: 4 + 15 * u() },
    agitation: { everyS: 5 + 175 * u() },
    usedCm2PerL: 8000 * u(),
    ageH: 4 * u(),
  });
  const { staleLoss, staleTimeS } = genericAgitationLaw;
  const { increase, perCm2PerL } = genericUseLaw;
  const stale = (s: number): number => 1 - (1 - Math.exp(-s / staleTimeS)) / (s / staleTimeS);
  const rate = (s: number): number =>
    curves === "scaled" ? (1 - staleLoss * stale(s)) ** (truth.loss / staleLoss) : 1 - truth.loss * stale(s);
  const worn = (portions: number): number =>
    curves === "scaled"
      ? (1 + increase * portions) ** (truth.increase / increase)
      : 1 + truth.increase * portions;
  const timeOf = ({ temperatureC, dilution, agitation, usedCm2PerL, ageH }: Where): number =>
    truth.base *
    Math.exp((truth.energy / R) * (1 / (temperatureC + 273.15) - 1 / 293.15)) *
    ((1 + (dilution as { waterParts: number }).waterParts) / 10) ** truth.n *
    (rate(30) / rate((agitation as { everyS: number }).everyS)) *
    worn((usedCm2PerL as number) / perCm2PerL) *
    Math.exp(truth.slowing * Math.sqrt(ageH as number));
  const run = (where: Where): Run => ({
    ...where,
    timeS: timeOf(where) * Math.exp(NOISE * normal()),
    outcome: { kind: "good", logSd: NOISE },
  });
  return { draw, timeOf, run };
}

const mean = (all: readonly number[]): number => all.reduce((sum, each) => sum + each, 0) / all.length;
const spread = (known: LearnedKnowledge, where: Where): number => {
  const { timeS, highS } = predict(known, where);
  return Math.log(highS / timeS);
};

/**
 * What one photographer sees in a world: how near the answer is before and after, and what the tests at hand
 * would be worth.
 */
function photographer(u: () => number, curves: Curves, runs: number) {
  const { draw, timeOf, run } = world(u, curves);
  const known = learn(
    start,
    Array.from({ length: runs }, () => run(draw())),
  );
  const question = draw();
  const candidates = Array.from({ length: 8 }, draw);
  const ranked = nextTest(
    known,
    candidates.map((each) => ({ ...each, outcomeLogSd: NOISE })),
    question,
  );
  const best = candidates.find(({ temperatureC }) => temperatureC === ranked[0]!.candidate.temperatureC)!;
  const anyOne = candidates[Math.floor(8 * u())]!;
  const { lowS, highS, timeS } = predict(known, question);
  const truth = timeOf(question);
  return {
    inside: truth >= lowS && truth <= highS ? 1 : 0,
    error: Math.abs(Math.log(timeS / truth)),
    before: Math.abs(Math.log(predict(start, question).timeS / truth)),
    afterBest: spread(learn(known, [run(best)]), question),
    afterAny: spread(learn(known, [run(anyOne)]), question),
  };
}

describe.each<[Curves, number, number, number, number]>([
  // Curves, runs, the least that may be covered, and what docs/learning.md says: the share covered and the
  // error against the default's.
  ["scaled", 5, 0.87, 0.93, 0.29],
  ["scaled", 20, 0.87, 0.9, 0.1],
  ["their own", 5, 0.87, 0.9, 0.33],
  // Where curves are of another form than the model's, runs in number show it: the interval is a few in a
  // hundred short.
  ["their own", 20, 0.85, 0.87, 0.12],
  ["their own", 100, 0.85, 0.87, 0.05],
])(
  `${WORLDS} worlds drawn from the prior, curves of agitation and use %s, %i runs each`,
  (curves, runs, least, told, error) => {
    const simulate = () => {
      const u = uniform(20240501);
      return Array.from({ length: WORLDS }, () => photographer(u, curves, runs));
    };
    // Once for all three, and only when one of them runs.
    let worlds: ReturnType<typeof simulate> | undefined;
    const seen = () => (worlds ??= simulate());

    it(`covers the truth with the 90 % interval in ${100 * least} to 93 %, and as often as the page says`, () => {
      const covered = mean(seen().map(({ inside }) => inside));
      expect(covered).toBeGreaterThanOrEqual(least);
      expect(covered).toBeLessThanOrEqual(0.93);
      expect(covered).toBeCloseTo(told, 2);
      // Up to a second or two of work, in whichever test comes first; a busy machine may take long over it.
    }, 60_000);
    it("errs at most half as much as the handbook's default, and as much as the page says", () => {
      const share = mean(seen().map((each) => each.error)) / mean(seen().map(({ before }) => before));
      expect(share).toBeLessThanOrEqual(0.5);
      expect(share).toBeCloseTo(error, 2);
    });
    it("gains more from the test ranked first than from one at random", () => {
      const share =
        mean(seen().map(({ afterBest }) => afterBest)) / mean(seen().map(({ afterAny }) => afterAny));
      // After many runs one more changes little, whichever it is.
      expect(share).toBeLessThan(runs > 20 ? 1 : 0.98);
      if (curves === "scaled" && runs === 5) expect(share).toBeCloseTo(0.74, 2);
    });
  },
);

describe("at the ends of the intervals and the use that the laws serve", () => {
  it.each<[Curves, number, number]>([
    ["scaled", 0.87, 0.93],
    ["their own", 0.85, 0.93],
  ])(
    "the interval holds the truth as often, curves %s",
    (curves, least, most) => {
      const u = uniform(7);
      const covered = Array.from({ length: WORLDS }, () => {
        const { draw, timeOf, run } = world(u, curves);
        const question = { ...draw(), agitation: { everyS: 180 }, usedCm2PerL: 8000 };
        const { lowS, highS } = predict(
          learn(
            start,
            Array.from({ length: 20 }, () => run(draw())),
          ),
          question,
        );
        return lowS <= timeOf(question) && timeOf(question) <= highS ? 1 : 0;
      });
      expect(mean(covered)).toBeGreaterThanOrEqual(least);
      expect(mean(covered)).toBeLessThanOrEqual(most);
    },
    30_000,
  );
  it("eight runs at 30 s and eight at 180 s are both answered with what they said", () => {
    const known = learn(
      start,
      Array.from({ length: 16 }, (_, i): Run => ({
        timeS: i < 8 ? 510 : 600,
        temperatureC: 20,
        agitation: { everyS: i < 8 ? 30 : 180 },
        outcome: { kind: "good" },
        id: String(i),
      })),
    );
    for (const [everyS, right] of [
      [30, 510],
      [180, 600],
    ] as const) {
      const { timeS } = predict(known, { agitation: { everyS } });
      expect(Math.abs(Math.log(timeS / right))).toBeLessThan(0.01);
    }
  });
});
