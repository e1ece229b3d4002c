/* A known time that names every side it can, with a law for each cause. Invented. */
import type { Baseline, Knowledge } from "../../src/index.js";

export const known: Baseline = {
  timeS: 510,
  temperatureC: 20,
  dilution: "1+9",
  agitation: { everyS: 60 },
  gamma: 0.6,
};
export const knowledge: Knowledge = {
  temperature: { kind: "coefficient", ratio: 2, intervalC: 10 },
  dilution: { kind: "power", exponent: 0.9 },
  agitation: { staleLoss: 0.6, staleTimeS: 60 },
  use: { increase: 0.1, perCm2PerL: 500, growth: "linear" },
  age: { kind: "half-life", halfLifeH: 10 },
  growth: { gammaInfinity: 1.4, ratePerS: 0.004, appearanceS: 0 },
};
