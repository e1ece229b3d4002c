/*
 * What the sentence of a caution about a brew names besides its limit and its actual figure.
 */

/** The `data` of a caution about a brew, by its code. */
export interface BrewCautionData {
  /** a bath that may be far more alkaline than is likely */
  readonly "ph-unsure": {
    /** whether the emulsion is soft */
    readonly soft: boolean;
    /** low end of about a 90 % interval of the pH of the bath as it is */
    readonly low: number;
    /** high end of it */
    readonly high: number;
  };
  /** a bath in which gelatin swells */
  readonly "ph-high": {
    /** whether the emulsion is soft */
    readonly soft: boolean;
    /** pH of the bath as it is */
    readonly ph: number;
  };
  /** acid with carbonate */
  readonly "acid-foams": {
    /** most gas that can come off, l */
    readonly gasL: number;
    /** the same for a litre of bath */
    readonly gasLPerL?: number | undefined;
  };
  /** a brew of several ingredients */
  readonly "mix-apart": {
    /** whether it holds coffee */
    readonly coffee: boolean;
    /** whether it holds vitamin C */
    readonly vitaminC: boolean;
  };
  /** fast film without a restrainer */
  readonly "restrainer-wanted": {
    /** from which film speed on, ISO arithmetic */
    readonly iso: number;
    /** how much potassium bromide, g/l */
    readonly bromideGPerL: number;
    /** how much salt instead, from and to, g/l */
    readonly saltGPerL: readonly [number, number];
  };
  /** more than the water can hold */
  readonly "undissolved": {
    /** the ingredient as the handbook names it */
    readonly ingredient: string;
  };
  /** caustic soda with too little water */
  readonly "too-concentrated": {
    /** the ingredient as the handbook names it */
    readonly ingredient: string;
  };
  /** a spoon of uncertain weight */
  readonly "spoon-range": {
    /** the ingredient as the handbook names it */
    readonly ingredient: string;
  };
  /** less than a spoon measures */
  readonly "spoon-too-large": {
    /** the ingredient as the handbook names it */
    readonly ingredient: string;
    /** the smallest part of a spoon that can be measured */
    readonly spoons: number;
    /** where a solution measures so little: g in 100 ml, what is weighed for it, its water, what is taken */
    readonly solution?: Readonly<Record<"percent" | "weighedG" | "waterMl" | "ml", number>> | undefined;
  };
  /** what is weighed and never spooned */
  readonly "never-by-spoon": {
    /** the ingredient as the handbook names it */
    readonly ingredient: string;
  };
  /** what an ingredient may do to whoever handles it */
  readonly "hazard": {
    /** the ingredient as the handbook names it */
    readonly ingredient: string;
    /** the hazard as the handbook names it */
    readonly hazard: string;
  };
  /** two brews of unlike pH */
  readonly "alkali-changed": {
    /** pH of the known brew */
    readonly fromPh: number;
    /** pH of today's */
    readonly toPh: number;
  };
  /** powder in the oven */
  readonly "baking-depth": {
    /** its depth, mm */
    readonly depthMm: number;
  };
  /** a fresh brew */
  readonly "rest-before-use": {
    /** how long to wait at least, s */
    readonly minS: number;
    /** how long at most, s */
    readonly maxS: number;
  };
}
