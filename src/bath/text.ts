/*
 * The sentences of the cautions about a bath, each from its data, so that another language reads no English.
 * Those of use and age alone are with their causes.
 */
import type { Caution, CautionSeverity } from "../core/caution.js";
import { digits } from "../core/digits.js";

/** A caution before it has words. */
export type BathFacts = Omit<Caution, "code" | "message" | "severity">;

/** Codes of the cautions that this module writes. */
export type BathCautionCode =
  | "bath-slow"
  | "bath-past-agent"
  | "bath-capacity-reached"
  | "too-little-stock"
  | "thin-layer"
  | "default-law";

const SENTENCES: Readonly<Record<BathCautionCode, (facts: BathFacts) => string>> = {
  "bath-slow": ({ actual = 1 }) =>
    `The bath needs ${((actual - 1) * 100).toFixed(0)} % more time than a fresh one.`,
  "bath-past-agent": ({ limit, actual }) =>
    `This would bring the bath to ${digits(actual, 4)} cm² in each litre; ` +
    `${digits(limit, 4)} use up all its agent. Use more bath.`,
  "bath-capacity-reached": ({ limit, actual }) =>
    `This brings the bath to ${digits(actual, 4)} cm² in each litre; it can do ${digits(limit, 4)}. ` +
    `Use more bath.`,
  "too-little-stock": ({ limit = 0, actual = 0 }) =>
    `The bath holds ${actual.toFixed(1)} ml of stock; ${limit.toFixed(1)} ml is the least for this area. ` +
    `Use more bath or dilute less.`,
  "thin-layer": ({ limit, actual, data }) =>
    `The bath covers the dish with ${digits(actual)} ml for each cm²; ` +
    `at least ${digits(limit)} are needed, ${digits(data?.["leastMl"] as number)} ml in all.`,
  "default-law": ({ data }) =>
    `No data of your own for ${(data?.["causes"] as readonly string[]).join(", ")}. ` +
    `A generic law with a wide spread is used.`,
};

/** A caution about a bath, with its sentence. */
export function say(severity: CautionSeverity, code: BathCautionCode, facts: BathFacts): Caution {
  return { code, severity, message: SENTENCES[code](facts), ...facts };
}
