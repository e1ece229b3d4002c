/*
 * The same work done with general-purpose packages: an expression evaluator, a generic interpolator, a
 * generic solver of differential equations. The ratio is the alternative's time against ours, each prepared
 * as far as it can be; the note says what the alternative gives up. First both have to give the same answer,
 * else the benchmark stops: it would compare different work.
 */
import Spline from "cubic-spline";
import * as kinetics from "darkroom-kinetics";
import { Parser } from "expr-eval-fork";
import { Solver } from "odex";
import { nanosecondsPerCall } from "./measure.mjs";

const { compensate, developUntil, newtonDrift, rateFunction } = kinetics;
const { genericAgitationLaw, genericDilutionLaw, genericInteractionLaw, genericUseLaw } = kinetics;
const ARRHENIUS = { kind: "arrhenius", activationEnergyKJPerMol: 58, sdKJPerMol: 12 };
const GAS_CONSTANT_KJ = 8.314462618e-3;
const E_OVER_R = 58 / GAS_CONSTANT_KJ;

function same(what, ours, theirs, tolerance) {
  if (!(Math.abs(ours / theirs - 1) <= tolerance))
    throw new Error(`${what}: ours gives ${ours}, the alternative ${theirs}`);
}

/** Sums what `work` gives over temperatures from 15 to 25 °C. */
const sweep = (work) => (calls) => {
  let sum = 0;
  for (let i = 0; i < calls; i += 1) sum += work(15 + (i % 1000) * 0.01);
  return sum;
};

export default function alternatives(report) {
  const against = (name, [ours, ourCalls], [theirs, theirCalls], givesUp) => {
    const ourNs = nanosecondsPerCall(sweep(ours), ourCalls);
    const theirNs = nanosecondsPerCall(sweep(theirs), theirCalls);
    report({
      name,
      ratio: theirNs / ourNs,
      note: `${theirNs.toFixed(0)} ns against ${ourNs.toFixed(0)} ns; gives up: ${givesUp}`,
    });
  };
  expressions(against);
  interpolation(against);
  differentialEquation(against);
}

function expressions(against) {
  const rate = rateFunction(20, ARRHENIUS);
  const factor = new Parser().parse("exp(k * (1 / (t + 273.15) - 1 / 293.15))");
  const evaluated = (t) => factor.evaluate({ k: E_OVER_R, t });
  const compiled = factor.simplify({ k: E_OVER_R }).toJSFunction("t");
  same("temperature alone", 1 / rate(16), evaluated(16), 1e-12);
  against(
    "temperature alone: expression, evaluated",
    [(t) => 1 / rate(t), 200_000],
    [evaluated, 20_000],
    "ranges, units, the law's spread",
  );
  against(
    "temperature alone: expression, compiled",
    [(t) => 1 / rate(t), 200_000],
    [compiled, 200_000],
    "the same, and code made from text at run time",
  );

  const known = { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 } };
  const today = (temperatureC) => ({
    temperatureC,
    dilution: "1+14",
    agitation: { everyS: 30 },
    usedCm2PerL: 516.128,
  });
  const whole = new Parser().parse(
    "base * exp(k * (1 / (t + 273.15) - 1 / 293.15)) * ((s0 * (w + s)) / (s * (w0 + s0))) ^ n * " +
      "(1 - a * (1 + (exp(-x0) - 1) / x0)) / (1 - a * (1 + (exp(-x) - 1) / x)) * (1 + p * u / 516.128) * " +
      "exp(h * log2((w + s) * s0 / (s * (w0 + s0))) * (1 / (t + 273.15) - 1 / 293.15))",
  );
  const given = {
    base: 510,
    k: E_OVER_R,
    s0: 1,
    w0: 9,
    s: 1,
    w: 14,
    n: genericDilutionLaw.exponent,
    a: genericAgitationLaw.staleLoss,
    x0: 60 / genericAgitationLaw.staleTimeS,
    x: 30 / genericAgitationLaw.staleTimeS,
    p: genericUseLaw.increase,
    h: genericInteractionLaw.perHalvingKJPerMol / GAS_CONSTANT_KJ,
    u: 516.128,
  };
  const laws = { temperature: ARRHENIUS };
  const ours = (t) => compensate(known, today(t), laws).timeS;
  const theirs = (t) => whole.evaluate({ ...given, t });
  same("the main job", ours(16), theirs(16), 1e-12);
  against(
    "the main job: expression, evaluated",
    [ours, 20_000],
    [theirs, 20_000],
    "interval, reasons, sources, cautions, every check",
  );
}

function interpolation(against) {
  // Invented: a bath that holds its time over three rows and then gets faster, as a maker's rounding makes
  // tables do.
  const rows = [
    [15, 720],
    [18, 600],
    [20, 600],
    [22, 600],
    [24, 360],
    [25, 330],
  ].map(([temperatureC, timeS]) => ({ temperatureC, timeS }));
  const rate = rateFunction(20, { kind: "table", rows });
  const inverse = (t) => -1 / (t + 273.15);
  const spline = new Spline(
    rows.map((row) => inverse(row.temperatureC)),
    rows.map((row) => Math.log(row.timeS / 600)),
  );
  const theirs = (t) => Math.exp(spline.at(inverse(t)));
  for (const { temperatureC } of rows)
    same(`the row at ${temperatureC} °C`, 1 / rate(temperatureC), theirs(temperatureC), 1e-9);
  const level = Array.from({ length: 401 }, (_, i) => 18 + i / 100);
  const bump = Math.max(...level.map((t) => Math.abs(theirs(t) - 1)));
  const ourBump = Math.max(...level.map((t) => Math.abs(1 / rate(t) - 1)));
  against(
    "a maker's table: natural cubic spline",
    [(t) => 1 / rate(t), 100_000],
    [theirs, 100_000],
    `staying between the rows: ${(bump * 100).toFixed(1)} % off where three rows are level (ours ${(ourBump * 100).toFixed(1)} %), and the time beyond the rows`,
  );
}

function differentialEquation(against) {
  const drift = (startC) => ({ startC, ambientC: 14, timeConstantS: 5400 });
  const ours = (startC) =>
    developUntil({ equivalentS: 510, referenceC: 20, law: ARRHENIUS, temperatureAt: drift(startC) });
  // Clock time as a function of equivalent time, so that no event has to be found: dt/du = 1/rate.
  const solver = new Solver(1);
  solver.absoluteTolerance = solver.relativeTolerance = 1e-9;
  const theirs = (startC) => {
    const temperatureAt = newtonDrift(drift(startC));
    return solver.solve(
      (_, [t]) => [Math.exp(E_OVER_R * (1 / (temperatureAt(t) + 273.15) - 1 / 293.15))],
      0,
      [0],
      510,
    ).y[0];
  };
  same("a cooling bath", ours(18), theirs(18), 1e-6);
  against(
    "a cooling bath: generic solver",
    [ours, 2_000],
    [theirs, 2_000],
    "ranges, a bath that stops working, jumps in a log of readings",
  );
}
