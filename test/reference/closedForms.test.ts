/*
 * Every closed form against 50 digits, which digits/make.mjs worked out with decimal.js: near the limit of contrast, for steps of a
 * hundred-thousandth of a degree, and far out in every argument.
 */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as library from "../../src/index.js";
import { exact } from "./digits/exact.mjs";

interface Case {
  readonly input: readonly unknown[];
  readonly value: string;
}
type Call = (...input: readonly never[]) => unknown;

const stored = JSON.parse(readFileSync("test/reference/digits/closedForms.json", "utf8")) as Record<
  string,
  readonly Case[]
>;
const everyS = (seconds: number): library.Agitation => (seconds === 0 ? "continuous" : { everyS: seconds });
/** What stands behind a form, where it is not the function of the same name alone. */
const behind: Record<string, Call> = {
  asArrheniusLaw: (...input: Parameters<typeof library.asArrheniusLaw>) =>
    library.asArrheniusLaw(...input).activationEnergyKJPerMol,
  agitationFactor: (from: number, to: number, law: library.AgitationLaw) =>
    library.agitationFactor(everyS(from), everyS(to), law),
  growthLimitFromDoubling: (pair: library.DoublingPair) => library.growthFromDoubling(pair).gammaInfinity,
  growthRateFromDoubling: (pair: library.DoublingPair) => library.growthFromDoubling(pair).ratePerS,
  newtonDrift: (drift: library.NewtonDrift, timeS: number) => library.newtonDrift(drift)(timeS),
  combineEstimates: (...input: Parameters<typeof library.combineEstimates>) =>
    library.combineEstimates(...input).timeS,
  mixVolumes: (...input: Parameters<typeof library.mixVolumes>) => library.mixVolumes(...input).stockMl,
};
const off = (value: number, right: string): number => exact(value).div(right).minus(1).abs().toNumber();

describe("closed forms, against 50 digits", () => {
  it.each(Object.entries(stored))("%s is right to 1e-12", (form, cases) => {
    const call = behind[form] ?? (library as unknown as Record<string, Call>)[form]!;
    expect(cases.length).toBe(60);
    const misses = cases.map(({ input, value }) => ({
      input,
      off: off(call(...(input as readonly never[])) as number, value),
    }));
    expect(misses.filter((miss) => !(miss.off <= 1e-12))).toEqual([]);
  });

  it("sees an error in the twelfth digit", () => {
    expect(off(1 + 2e-12, "1")).toBeGreaterThan(1e-12);
    expect(off(1 / 3, "0.33333333333333333333333333333333333333333333333333")).toBeLessThan(1e-16);
  });
});
