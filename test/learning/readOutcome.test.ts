import { describe, expect, it } from "vitest";
import { readOutcome } from "../../src/learning/readOutcome.js";
import type { RunOutcome } from "../../src/index.js";

const LOG = Math.log(600);
const STEP = Math.log(1.4);
const said = (outcome: RunOutcome) => readOutcome("learn/runs/0", 600, outcome);
const close = (value: number): unknown => expect.closeTo(value, 12);

describe("windows", () => {
  it.each<[string, RunOutcome, number, number, number]>([
    ["good is less than half a step off", { kind: "good" }, -STEP / 2, STEP / 2, 0.07],
    ["no step is good", { kind: "steps", steps: 0 }, -STEP / 2, STEP / 2, 0.07],
    [
      "a step too much is a step less time, a quarter step either way",
      { kind: "steps", steps: 1 },
      -1.25 * STEP,
      -0.75 * STEP,
      Math.hypot(0.07, STEP / 4),
    ],
    [
      "half a step under",
      { kind: "steps", steps: -0.5 },
      0.25 * STEP,
      0.75 * STEP,
      Math.hypot(0.07, STEP / 8),
    ],
    [
      "steps of another size",
      { kind: "steps", steps: -1, perStep: 2 },
      0.75 * Math.LN2,
      1.25 * Math.LN2,
      Math.hypot(0.07, Math.LN2 / 4),
    ],
    ["thin is more than a quarter step under", { kind: "thin" }, STEP / 4, Infinity, 0.07],
    ["dense is more than a quarter step over", { kind: "dense" }, -Infinity, -STEP / 4, 0.07],
  ])("%s", (_, outcome, low, high, sd) => {
    expect(said(outcome)).toMatchObject({
      kind: "window",
      low: close(LOG + low),
      high: close(LOG + high),
      sd: close(sd),
    });
  });
  it("good is from 0.845 to 1.18 of the right time", () => {
    const { low, high } = said({ kind: "good" }) as { low: number; high: number };
    expect(Math.exp(low) / 600).toBeCloseTo(0.845, 3);
    expect(Math.exp(high) / 600).toBeCloseTo(1.183, 3);
  });
});

const FACTOR = { parameter: "appearance factor", slope: close(0.15) };
const EYE = { parameter: "eye", slope: close(0.03) };
const GROWS = { share: close(0.3), given: close(LOG) };

describe("values", () => {
  it.each<[string, RunOutcome, number, number, object?]>([
    ["good with its own spread", { kind: "good", logSd: 0.05 }, 0, 0.05],
    ["steps with their own spread", { kind: "steps", steps: 1, logSd: 0.2 }, -STEP, 0.2],
    [
      "a judged time",
      { kind: "judged", timeRatio: 1.2 },
      Math.log(1.2),
      // 10 % and a quarter of the correction in all, of which 3 % are of the eye.
      Math.sqrt(0.1 ** 2 + (Math.log(1.2) / 4) ** 2 - 0.03 ** 2),
      { shared: EYE },
    ],
    ["no spread below a tenth of a per cent", { kind: "good", logSd: 1e-9 }, 0, 1e-3],
    [
      "a gradient",
      { kind: "gamma", gamma: 0.5, wanted: 0.6 },
      Math.log(1.2) / 0.7,
      0.05 / 0.6 / 0.7,
      { shared: { parameter: "growth", slope: close((0.3 * Math.log(1.2)) / 0.7) }, grows: GROWS },
    ],
    [
      "a density",
      { kind: "density", density: 1, wanted: 1, sd: 0.07 },
      0,
      0.1,
      { shared: { parameter: "growth", slope: 0 }, grows: GROWS },
    ],
    [
      "a time of appearance",
      { kind: "appearance", appearanceS: 50, factor: 14.4 },
      Math.log(1.2),
      0.1,
      { shared: FACTOR },
    ],
  ])("%s", (_, outcome, shift, sd, more?: object) => {
    expect(said(outcome)).toEqual({
      kind: "value",
      log: close(LOG + shift),
      sd: close(sd),
      ...more,
    });
  });
});

it("a failed and a fogged run say nothing", () => {
  expect([said({ kind: "failed" }), said({ kind: "fogged", note: "lamp" })]).toEqual(["failed", "fogged"]);
});

describe("wrong outcomes", () => {
  it.each([
    [{ kind: "fine" }, "not-one-of", "/runs/0/outcome/kind"],
    [{ kind: "thin", logSd: 0.1 }, "not-one-of", "/runs/0/outcome/logSd"],
    [{ kind: "judged", timeRatio: 0 }, "out-of-range", "/runs/0/outcome/timeRatio"],
    [{ kind: "steps", steps: 11 }, "out-of-range", "/runs/0/outcome/steps"],
    [{ kind: "steps", steps: 1, perStep: 1 }, "out-of-range", "/runs/0/outcome/perStep"],
    [{ kind: "gamma", gamma: -1, wanted: 1 }, "out-of-range", "/runs/0/outcome/gamma"],
    [{ kind: "density", density: 1, wanted: 11 }, "out-of-range", "/runs/0/outcome/wanted"],
    [{ kind: "good", logSd: 4 }, "out-of-range", "/runs/0/outcome/logSd"],
    [undefined, "missing", "/runs/0/outcome"],
  ])("%j", (outcome, code, path) => {
    expect(() => said(outcome as RunOutcome)).toThrow(expect.objectContaining({ code, path }));
  });
});
