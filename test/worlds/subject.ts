/* What is put among the photographers: whatever learns from runs and predicts. */
import type { Agitation, DevelopmentRun } from "../../src/index.js";

/** Conditions as the worlds draw them: each is given. */
export interface Where {
  readonly temperatureC: number;
  readonly dilution: string;
  readonly agitation: Exclude<Agitation, string>;
  readonly usedCm2PerL: number;
  readonly ageH: number;
}

/** The time that the notebook starts from. */
export interface Start {
  readonly timeS: number;
  readonly temperatureC: number;
  readonly dilution: string;
  readonly agitation: Exclude<Agitation, string>;
}

/** A run with the marks of when, with what and by whom. */
export type WorldRun = DevelopmentRun & {
  readonly thermometer?: string;
  readonly by?: string;
  readonly printed?: boolean;
};

/** Anything with the public shapes of learning. */
export interface Subject<Knowledge> {
  startKnowledge(baseline: Start, options: { readonly noise: "estimated" | "stated" }): Knowledge;
  learn(knowledge: Knowledge, runs: readonly WorldRun[]): Knowledge;
  predict(
    knowledge: Knowledge,
    conditions: Where,
  ): { readonly timeS: number; readonly lowS: number; readonly highS: number };
}
