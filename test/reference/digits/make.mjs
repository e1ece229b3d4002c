/*
 * Writes closedForms.json beside it: every closed form of the package worked out at 60 digits with decimal.js, 50 of them kept.
 * `node test/reference/digits/make.mjs` makes it anew. The formulas are written from docs/models.md, not from the code; the inputs are
 * doubles, each taken at its exact value.
 */
import { writeFileSync } from "node:fs";
import { D, exact } from "./exact.mjs";

const d = (value) => new D(value);
const one = d(1);
const R = d("0.008314462618"); // kJ/(mol·K), CODATA 2018
const kelvin = (c) => d(c).plus("273.15");

/** A share of the time lost to a stale layer: 1 − (1 − e^−x)/x. */
const stale = (everyS, law) => {
  if (everyS.isZero()) return d(0);
  const x = d(everyS).div(law.staleTimeS);
  return one.minus(one.minus(x.neg().exp()).div(x));
};
/** No interval is slower than stand, 0.29 of continuous. */
const agitationRate = (everyS, law) => D.max(d("0.29"), curveRate(everyS, law));
const curveRate = (everyS, law) => {
  const shape = d(law.shape ?? law.staleLoss);
  const s = stale(everyS, law);
  return shape.isZero()
    ? s.times(law.staleLoss).neg().exp()
    : one.minus(shape.times(s)).pow(d(law.staleLoss).div(shape));
};
const used = (cm2PerL, { increase, perCm2PerL, growth }) => {
  const portions = d(cm2PerL).div(perCm2PerL);
  return growth === "linear" ? one.plus(portions.times(increase)) : one.plus(increase).pow(portions);
};
const aged = (h, law) => {
  if (law.kind === "half-life") return d(2).pow(d(h).div(law.halfLifeH));
  if (law.kind === "speeding")
    return D.min(h, 24).div(24).pow("1.5").times(law.perDay).plus(unknown(h, 24)).exp();
  return D.min(h, 25).sqrt().times(law.perRootH).plus(unknown(h, 25)).exp();
};
/** Past the hours that it covers: 0.8 of 8 % for each further time that they are over. */
const unknown = (h, hours) => D.max(0, d(h).div(hours).minus(1)).times("0.08").times("0.8");
const growthTime = (gamma, law) =>
  d(law.appearanceS).minus(one.minus(d(gamma).div(law.gammaInfinity)).ln().div(law.ratePerS));
const pushed = (stops, law) =>
  d(law.perStop)
    .pow(stops)
    .times(
      stops > 0
        ? d(law.growth ?? 0)
            .times(stops)
            .times(stops)
            .exp()
        : 1,
    );
const logRate = (c, law) =>
  law.kind === "arrhenius"
    ? d(law.activationEnergyKJPerMol).div(R).div(kelvin(c)).neg()
    : d(law.ratio).ln().times(c).div(law.intervalC);

/** Each closed form by the name of its function. */
const forms = {
  temperatureFactor: ([from, to, law]) => logRate(from, law).minus(logRate(to, law)).exp(),
  temperatureCoefficient: ([low, high, law]) => logRate(high, law).minus(logRate(low, law)).exp(),
  asArrheniusLaw: ([law, low, high]) =>
    R.times(logRate(high, law).minus(logRate(low, law))).div(
      one.div(kelvin(low)).minus(one.div(kelvin(high))),
    ),
  dilutionFactor: ([from, to, law]) => {
    const strength = ({ stockParts, waterParts }) => d(stockParts).div(d(stockParts).plus(waterParts));
    return strength(from).div(strength(to)).pow(law.exponent);
  },
  agitationFactor: ([from, to, law]) => agitationRate(from, law).div(agitationRate(to, law)),
  useFactor: ([from, to, law]) => used(to, law).div(used(from, law)),
  ageFactor: ([from, to, law]) => aged(to, law).div(aged(from, law)),
  pushFactor: ([stops, law]) => pushed(stops, law),
  gammaAt: ([timeS, law]) =>
    one.minus(d(law.ratePerS).times(d(timeS).minus(law.appearanceS)).neg().exp()).times(law.gammaInfinity),
  timeForGamma: ([gamma, law]) => growthTime(gamma, law),
  contrastFactor: ([from, to, law]) => growthTime(to, law).div(growthTime(from, law)),
  growthLimitFromDoubling: ([{ gamma, gammaAtDouble }]) =>
    d(gamma).pow(2).div(d(gamma).times(2).minus(gammaAtDouble)),
  growthRateFromDoubling: ([{ timeS, gamma, gammaAtDouble }]) =>
    d(gamma).div(d(gammaAtDouble).minus(gamma)).ln().div(timeS),
  equivalentTime: ([[a, b], referenceC, law]) => {
    // ln(rate) is straight in °C: the mean of an exponential.
    const u = logRate(b.temperatureC, law).minus(logRate(a.temperatureC, law));
    const start = logRate(a.temperatureC, law).minus(logRate(referenceC, law)).exp();
    return start.times(d(b.timeS).minus(a.timeS)).times(u.isZero() ? 1 : u.exp().minus(1).div(u));
  },
  newtonDrift: ([{ startC, ambientC, timeConstantS }, timeS]) =>
    d(ambientC).plus(d(startC).minus(ambientC).times(d(timeS).div(timeConstantS).neg().exp())),
  combineEstimates: ([a, b]) => {
    // The factor 2·1.645 of the interval is the same in both and falls out.
    const variance = ({ lowS, highS }) => d(highS).div(lowS).ln().pow(2);
    const [va, vb] = [variance(a), variance(b)];
    return d(a.timeS).ln().times(vb).plus(d(b.timeS).ln().times(va)).div(va.plus(vb)).exp();
  },
  appearanceFactor: ([{ appearanceS, totalS }]) => d(totalS).div(appearanceS),
  timeFromAppearance: ([{ appearanceS, factor }]) => d(appearanceS).times(factor),
  clearingTimeAt: ([{ clearingS, fromC, toC }]) => {
    // Colder takes 2.7 times as long for each 10 °C; warmer takes half, counted up to 20 °C.
    const colder = fromC.minus(D.min(toC, D.max(fromC, 20)));
    return d(clearingS).times(d(COLD[colder.gt(0) ? "slower" : "quicker"]).pow(colder.div(10)));
  },
  fahrenheitToCelsius: ([f]) => d(f).minus(32).times(5).div(9),
  celsiusToFahrenheit: ([c]) => d(c).times(9).div(5).plus(32),
  mixVolumes: ([{ stockParts, waterParts }, totalMl]) =>
    d(totalMl).times(stockParts).div(d(stockParts).plus(waterParts)),
};
const COLD = { slower: "2.7", quicker: "2" };

// The same inputs on every run: a linear congruential generator (W. H. Press et al., Numerical Recipes, 2nd ed., 1992, p. 284).
let seed = 20261130;
const random = () => (seed = (seed * 1664525 + 1013904223) % 2 ** 32) / 2 ** 32;
const between = (low, high) => low + (high - low) * random();
const spread = (low, high) => low * Math.exp(Math.log(high / low) * random());
const arrhenius = () => ({ kind: "arrhenius", activationEnergyKJPerMol: between(0, 200) });
const coefficient = () => ({ kind: "coefficient", ratio: between(1, 4), intervalC: between(3, 20) });
const growth = () => ({
  gammaInfinity: between(0.3, 3),
  ratePerS: spread(1e-4, 0.1),
  appearanceS: between(0, 200),
});
const parts = () => ({ stockParts: spread(0.1, 100), waterParts: between(0, 500) });
const agitation = (i) =>
  i % 3 === 0 ? { staleLoss: between(0, 0.99) } : { staleLoss: between(0, 3), shape: between(0, 0.99) };
/** How near a gradient comes to its limit: a tenth of it away at first, the last double below it in the end. */
const near = (i, { gammaInfinity }) => gammaInfinity * (1 - 10 ** -((i % 15) + 1));
const estimate = () => {
  const timeS = spread(100, 3000);
  return { timeS, lowS: timeS * between(0.6, 0.97), highS: timeS * between(1.03, 1.6) };
};

const inputs = {
  temperatureFactor: (i) => [between(0, 100), between(0, 100), i % 2 ? arrhenius() : coefficient()],
  temperatureCoefficient: (i) => [between(0, 50), between(50, 100), i % 2 ? arrhenius() : coefficient()],
  asArrheniusLaw: (i) => {
    const low = between(15, 25);
    return [{ kind: "coefficient", ratio: between(1, 3), intervalC: 10 }, low, low + 10 ** -(i % 6)];
  },
  dilutionFactor: () => [parts(), parts(), { kind: "power", exponent: between(0, 3) }],
  agitationFactor: (i) => [
    i % 5 === 0 ? 0 : between(1, 180),
    i % 7 === 0 ? 0 : between(1, 180),
    { ...agitation(i), staleTimeS: spread(5, 1e5) },
  ],
  useFactor: (i) => [
    between(0, 2000),
    between(0, 5000),
    { increase: between(0, 0.3), perCm2PerL: 516.128, growth: i % 2 ? "linear" : "compound" },
  ],
  ageFactor: (i) => [
    between(0, 30),
    between(0, 60),
    [
      { kind: "half-life", halfLifeH: spread(10, 1000) },
      { kind: "speeding", perDay: between(-1, 1) },
      { kind: "slowing", perRootH: between(-1, 1) },
    ][i % 3],
  ],
  pushFactor: (i) => [
    between(-3, 5),
    { perStop: between(1, 3), ...(i % 2 ? { growth: between(0, 0.2) } : {}) },
  ],
  gammaAt: () => {
    const law = growth();
    return [law.appearanceS + spread(1e-3, 20) / law.ratePerS, law];
  },
  timeForGamma: (i) => {
    const law = growth();
    return [i % 2 ? near(i, law) : law.gammaInfinity * spread(1e-9, 0.9), law];
  },
  contrastFactor: (i) => {
    const law = growth();
    return [
      law.gammaInfinity * between(0.1, 0.9),
      i % 2 ? near(i, law) : law.gammaInfinity * between(0.1, 0.9),
      law,
    ];
  },
  growthLimitFromDoubling: () => [doubling()],
  growthRateFromDoubling: () => [doubling()],
  equivalentTime: (i) => {
    const temperatureC = between(10, 30);
    const endS = between(10, 1000);
    return [
      [
        { timeS: 0, temperatureC },
        { timeS: endS, temperatureC: temperatureC + 10 ** -(i % 8) * between(-5, 5) },
      ],
      20,
      coefficient(),
    ];
  },
  newtonDrift: () => [
    { startC: between(10, 40), ambientC: between(5, 35), timeConstantS: spread(60, 1e5) },
    spread(1, 1e5),
  ],
  combineEstimates: () => [estimate(), estimate()],
  appearanceFactor: () => [{ appearanceS: between(5, 100), totalS: between(150, 3000) }],
  timeFromAppearance: () => [{ appearanceS: between(5, 100), factor: between(3, 30) }],
  clearingTimeAt: () => [{ clearingS: between(20, 300), fromC: between(5, 30), toC: between(5, 30) }],
  fahrenheitToCelsius: () => [between(33, 212)],
  celsiusToFahrenheit: () => [between(0, 100)],
  mixVolumes: () => [parts(), between(100, 5000)],
};
/** Two gradients that some growth law gives, rounded to doubles; the law is asked back from what is left of it. */
function doubling() {
  const gamma = between(0.2, 2);
  return { timeS: between(60, 2000), gamma, gammaAtDouble: gamma * between(1.05, 1.95) };
}

/** An input with every double as the decimal that it is. */
const exactly = (input) => {
  if (typeof input === "number") return exact(input);
  if (Array.isArray(input)) return input.map(exactly);
  if (typeof input !== "object") return input;
  return Object.fromEntries(Object.entries(input).map(([name, value]) => [name, exactly(value)]));
};

const EACH = 60;
const cases = Object.keys(forms).map((form) => ({
  form,
  cases: Array.from({ length: EACH }, (_, i) => {
    const input = inputs[form](i);
    return { input, value: forms[form](exactly(input)).toSignificantDigits(50).toString() };
  }),
}));
const lines = cases.map(
  ({ form, cases: rows }) =>
    `  ${JSON.stringify(form)}: [\n${rows.map((row) => `    ${JSON.stringify(row)}`).join(",\n")}\n  ]`,
);
writeFileSync(new URL("closedForms.json", import.meta.url), `{\n${lines.join(",\n")}\n}\n`);
