/*
 * The page on priors is what the tables say today, and no prior is narrower than they are. `npm run accuracy`
 * rewrites docs/decisions/priors.md.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { DEPARTURE_LOG_SD, genericDilutionLaw } from "../../src/dilution/genericDilutionLaw.js";
import { handbookDilution } from "../../src/handbook/dilution.js";
import { genericAgitationLaw, genericInteractionLaw, genericTemperatureLaw } from "../../src/index.js";
import { DEPARTURE_LOG_SD as DEGREE_LOG_SD, GIVEN_LAW_SD_KJ } from "../../src/temperature/law.js";
import {
  aboutOne,
  agitationScales,
  dilutions,
  moments,
  mostLikely,
  overInverse,
  ownSlope,
  stockAndHalfPairs,
  temperatures,
} from "./priors.js";
import { priorsPage } from "./priorsPage.js";
import { writing } from "../helpers.js";

const PAGE = "docs/decisions/priors.md";

if (writing) writeFileSync(PAGE, priorsPage());

describe("the page on priors", () => {
  it("is what the tables say today", () => {
    expect(readFileSync(PAGE, "utf8")).toBe(priorsPage());
  });
});

describe("no prior is narrower than the published tables", () => {
  it("temperature: the spread holds their root mean square about the mean", () => {
    const { activationEnergyKJPerMol: mean, sdKJPerMol: sd = 0 } = genericTemperatureLaw;
    for (const some of [temperatures, temperatures.filter(({ read }) => read)]) {
      const { mean: found, between } = mostLikely(some, 0, 100);
      expect(Math.hypot(between, found - mean)).toBeLessThanOrEqual(sd + 0.5);
      // Sixteen tables know their scatter to a sixth of itself.
      expect(between).toBeLessThanOrEqual(GIVEN_LAW_SD_KJ * (1 + 1 / 6));
    }
    const held = temperatures.filter((one) => Math.abs(ownSlope(one).slope - mean) < 1.6449 * sd);
    expect(held.length / temperatures.length).toBeGreaterThanOrEqual(0.8);
  });
  it("temperature: the departure is no less than the most likely, and not beyond what the tables bear", () => {
    for (const some of [temperatures, temperatures.filter(({ read }) => read)]) {
      const at = (walk: number): number => mostLikely(some, overInverse(walk), 100).logLikelihood;
      const walks = [0, 0.005, 0.01, 0.015, 0.02, 0.025, 0.03, 0.04, 0.05, 0.06];
      const best = walks.reduce((a, b) => (at(b) > at(a) ? b : a));
      expect(DEGREE_LOG_SD).toBeGreaterThanOrEqual(best);
      // A hundredth of the best likelihood is left at 4.6 below it: more than that is held, and not much more would be.
      expect(at(best) - at(DEGREE_LOG_SD)).toBeLessThan(4.6);
      expect(at(best) - at(2 * DEGREE_LOG_SD)).toBeGreaterThan(4.6);
    }
  });
  it("dilution: the exponent's spread holds the scatter, and the departure cannot be told from the best", () => {
    for (const some of [dilutions, dilutions.filter(({ read }) => read)]) {
      const found = mostLikely(some, DEPARTURE_LOG_SD, 2);
      expect(found.between).toBeLessThanOrEqual(genericDilutionLaw.sd!);
      expect(Math.abs(found.mean - genericDilutionLaw.exponent)).toBeLessThan(genericDilutionLaw.sd!);
      const best = Math.max(
        ...[0.15, 0.19, 0.23, 0.27, 0.31].map((walk) => mostLikely(some, walk, 2).logLikelihood),
      );
      // Twice the difference is less than the 95 % point of chi-square with one degree of freedom.
      expect(2 * (best - found.logLikelihood)).toBeLessThan(3.84);
      // A power without a departure is beyond all doubt not what the tables follow.
      expect(best - mostLikely(some, 0.05, 2).logLikelihood).toBeGreaterThan(20);
    }
  });
  it("temperature with dilution: the spread holds the root mean square of all pairs, and no pair is left out", () => {
    const { perHalvingKJPerMol: mean, sdKJPerMol: sd = 0 } = genericInteractionLaw;
    const changes = stockAndHalfPairs.map(({ changeKJ }) => changeKJ);
    expect(changes).toEqual([expect.closeTo(-12.2, 1), expect.closeTo(-52.6, 1), expect.closeTo(-22.1, 1)]);
    expect(aboutOne(changes, mean)).toBeLessThanOrEqual(sd);
    for (const change of changes) expect(Math.abs(change - mean)).toBeLessThan(1.6449 * sd);
    const halves = temperatures.filter(({ id }) => /half|1\+1/.test(id)).map(({ id }) => id);
    // The stock of the metaborate bath was not published beside it.
    expect(halves.filter((id) => id !== "memory-tank-metaborate-half")).toHaveLength(changes.length);
  });
  it("each family lies within its own spread of what its tables say", () => {
    for (const [family, { exponent, sd }] of Object.entries(handbookDilution)) {
      const some = dilutions.filter(({ group }) => group === family);
      if (some.length === 0) continue;
      const { mean, between } = mostLikely(some, DEPARTURE_LOG_SD, 2);
      expect(between, family).toBeLessThanOrEqual(sd);
      // The single remembered table of an ascorbate stock lies lower than the two that were read at four temperatures.
      expect(Math.abs(mean - exponent), family).toBeLessThan(family === "ascorbate-stock" ? 0.2 : sd);
    }
  });
  it("agitation: mean and spread of the published ratios", () => {
    const { staleLoss, staleTimeS, sdStaleLoss = 0 } = genericAgitationLaw;
    const { mean, sd } = moments(agitationScales(staleLoss, staleTimeS).map(({ scale }) => scale));
    expect(Math.abs(mean - staleLoss)).toBeLessThan(0.05);
    expect(sdStaleLoss).toBeGreaterThan(sd - 0.02);
  });
});
