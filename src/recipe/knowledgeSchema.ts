/*
 * Room: recipe. The schema of the laws that a recipe may carry.
 */
import type { JsonSchema } from "./readBySchema.js";
import {
  above0,
  CAPACITY,
  DILUTION,
  form,
  from,
  list,
  object,
  one,
  ORIGIN,
  TEMPERATURE,
  TIME,
} from "./schemaParts.js";

/** What may be known of the laws, each in the forms that its room takes. */
export const knowledgeSchema = (): JsonSchema =>
  object([], {
    temperature: {
      anyOf: [
        form("arrhenius", ["activationEnergyKJPerMol"], {
          activationEnergyKJPerMol: from(0, 200, "kJ/mol"),
          sdKJPerMol: from(0, 200, "kJ/mol"),
          ...ORIGIN,
        }),
        form("coefficient", ["ratio", "intervalC"], {
          ratio: from(1, 1e9, "over intervalC"),
          intervalC: above0(100, "°C"),
          sdRatio: from(0, 1e9),
          ...ORIGIN,
        }),
        form("table", ["rows"], {
          rows: list(
            object(["temperatureC", "timeS"], { temperatureC: TEMPERATURE, timeS: TIME, stepS: TIME }),
            2,
            50,
          ),
          ...ORIGIN,
        }),
      ],
    },
    dilution: {
      anyOf: [
        form("power", ["exponent"], {
          exponent: from(0, 3),
          sd: from(0, 3),
          scatterLogSd: from(0, 3),
          ...ORIGIN,
        }),
        form("table", ["rows"], {
          rows: list(object(["dilution", "timeS"], { dilution: DILUTION, timeS: TIME, stepS: TIME }), 2, 50),
          ...ORIGIN,
        }),
      ],
    },
    agitation: object(["staleLoss", "staleTimeS"], {
      staleLoss: from(0, 10, "to 0.99 without a shape"),
      staleTimeS: above0(1e5, "s"),
      sdStaleLoss: from(0, 10),
      shape: from(0, 0.99),
      ...ORIGIN,
    }),
    use: object(["increase", "perCm2PerL", "growth"], {
      increase: from(0, 10, "0.1 is 10 %"),
      perCm2PerL: from(0.001, 1e6, "cm² per litre"),
      growth: one("linear", "compound"),
      sdIncrease: from(0, 10),
      shape: from(0, 10),
      capacityCm2PerL: CAPACITY,
      dilution: DILUTION,
      ...ORIGIN,
    }),
    age: {
      anyOf: [
        form("half-life", ["halfLifeH"], { halfLifeH: above0(1e6, "h"), sdLog: from(0, 3), ...ORIGIN }),
        form("life", ["lifeH"], { lifeH: above0(1e6, "h"), ...ORIGIN }),
        form("slowing", ["perRootH"], {
          perRootH: from(-1, 1, "ln(time) by the root of an hour"),
          sdPerRootH: from(0, 3),
          ...ORIGIN,
        }),
        form("speeding", ["perDay"], {
          perDay: from(-1, 1, "ln(time) after a day"),
          sdPerDay: from(0, 3),
          ...ORIGIN,
        }),
      ],
    },
    growth: object(["gammaInfinity", "ratePerS", "appearanceS"], {
      gammaInfinity: from(0.01, 1000, "gradient"),
      ratePerS: from(1e-7, 100, "1/s"),
      appearanceS: from(0, 1e6, "s"),
      sd: object(["gammaInfinity", "ratePerS", "appearanceS"], {
        gammaInfinity: from(0, 1000),
        ratePerS: from(0, 100),
        appearanceS: from(0, 1e6),
        correlation: object(["limitRate", "limitAppearance", "rateAppearance"], {
          limitRate: from(-1, 1),
          limitAppearance: from(-1, 1),
          rateAppearance: from(-1, 1),
        }),
      }),
      ...ORIGIN,
    }),
  });
