/*
 * Module: handbook. Factors from the time of appearance to the whole time of development (A. Watkins's
 * method), by developing agent, as printed, with their sources. Typed data only.
 */
import { namesOf } from "../core/frozen.js";

/** Developing agents with a printed factor. */
export type AppearanceAgent =
  | "amidol"
  | "brew"
  | "edinol"
  | "eikonogen"
  | "glycin"
  | "hydroquinone"
  | "metol"
  | "metol-hydroquinone"
  | "p-aminophenol"
  | "pyro"
  | "pyro-metol";

/** The factor of an agent by its strength in the working bath, within the strengths that were printed. */
export interface AppearanceByStrength {
  /** the factor at 1 g/l; it goes with strength^−exponent */
  readonly atOneGPerL: number;
  readonly exponent: number;
  /** the least and greatest strength that was printed, g/l */
  readonly fromGPerL: number;
  readonly toGPerL: number;
  /** standard deviation of ln(factor): how far the printed rows lie off */
  readonly logSd: number;
}

/** Factors for soft, normal and strong contrast, and by strength for the agent whose lists have it. */
export interface HandbookAppearance {
  readonly soft: number;
  readonly normal: number;
  readonly strong: number;
  readonly byStrength?: AppearanceByStrength;
  /** standard deviation of ln(factor): how far printed lists disagree */
  readonly logSd: number;
  readonly sources: readonly string[];
}

const CASSELL =
  "B. E. Jones (ed.), Cassell's Cyclopaedia of Photography, London, 1911, Factorial development (list of " +
  "Tabloid formulae)";
const ABBOTT =
  "H. G. Abbott (attribution from memory), Modern Photography in Theory and Practice, Chicago, ch. VII";
const OTHERS = "soft and strong in the proportion of the agents of Cassell's list, 0.7 and 1.2";
/** One grain per US fluid ounce, g/l. */
const GRAIN_PER_OUNCE: number = 64.79891 / 29.5735295625;

/** Factors by agent. */
export const handbookAppearance: Readonly<Record<AppearanceAgent, HandbookAppearance>> = {
  // 18 at 2 grains an ounce in another list: one strength is no law, so strength is not heeded.
  "amidol": {
    soft: 7,
    normal: 10,
    strong: 12,
    logSd: 0.4,
    sources: [CASSELL, `${ABBOTT}: 18 at 2 gr/oz`],
  },
  // Coffee and vitamin C in no list: taken as pyrocatechin, the agent that coffee's acid is made of.
  "brew": { soft: 7, normal: 10, strong: 12, logSd: 0.7, sources: ["pyrocatechin 10 (from memory)", OTHERS] },
  "edinol": { soft: 14, normal: 20, strong: 24, logSd: 0.2, sources: [CASSELL] },
  "eikonogen": { soft: 8, normal: 12, strong: 15, logSd: 0.25, sources: [CASSELL, `${ABBOTT}: 9`] },
  "glycin": { soft: 9, normal: 13, strong: 16, logSd: 0.3, sources: [CASSELL] },
  "hydroquinone": { soft: 4, normal: 5.5, strong: 6.5, logSd: 0.2, sources: [ABBOTT, OTHERS] },
  "metol": { soft: 20, normal: 30, strong: 35, logSd: 0.15, sources: [CASSELL, `${ABBOTT}: 28`] },
  "metol-hydroquinone": {
    soft: 10,
    normal: 14,
    strong: 17,
    logSd: 0.15,
    sources: [`${CASSELL}; 15 in its worked example`, `${ABBOTT}: 13`, OTHERS],
  },
  "p-aminophenol": {
    soft: 12,
    normal: 16,
    strong: 18,
    logSd: 0.4,
    sources: [CASSELL, `${ABBOTT}: 40 for a syrup concentrate`],
  },
  // 11, 6, 5.25, 4.5, 4.75 at 1, 2, 3, 4, 8 grains an ounce (Abbott); 18 at 1 (Cassell, no bromide); 12, 24,
  // 40 at 2.5, 1.25, 5/6 (Schriever). Pooled: 18.9 × (grains an ounce)^−0.86, standard deviation 0.48 in ln.
  "pyro": {
    soft: 4,
    normal: 6,
    strong: 7,
    byStrength: {
      atOneGPerL: 18.9 * GRAIN_PER_OUNCE ** 0.86,
      exponent: 0.86,
      fromGPerL: (5 / 6) * GRAIN_PER_OUNCE,
      toGPerL: 8 * GRAIN_PER_OUNCE,
      logSd: 0.5,
    },
    logSd: 0.35,
    sources: [
      CASSELL,
      ABBOTT,
      "J. B. Schriever (ed.), Self-Instructing Library of Practical Photography, Scranton, 1909, ch. " +
        "XVIII and secs. 481-506",
    ],
  },
  // 25 for a fast aerial formula of H. E. Ives, 1920: a factor belongs to a formula.
  "pyro-metol": {
    soft: 6.5,
    normal: 9,
    strong: 11,
    logSd: 0.5,
    sources: [ABBOTT, OTHERS, "H. E. Ives, Airplane Photography, 1920, ch. XXII: 25"],
  },
};

/** The developing agents that `handbookAppearanceFactor` takes. */
export const appearanceAgents: readonly AppearanceAgent[] = /* @__PURE__ */ namesOf(handbookAppearance);
