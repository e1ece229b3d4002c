/*
 * Runs whose figures may be in another unit.
 */
import type { Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import { compensateSentences } from "../compensate/text.js";
import { fahrenheitCautions } from "../temperature/temperatureCautions.js";
import { fitNotebook } from "./fitNotebook.js";
import { everything } from "./learning.js";
import type { Entry } from "./notebook.js";
import { growthOf, readOutcome } from "./readOutcome.js";
import type { KnowledgePrior } from "./types.js";

/** A run may be so far from the prior by things that no law covers, in ln(time). */
const OTHERWISE_LOG_SD = 0.25;
/** A time is far off from so many standard deviations on, and fits up to so many. */
const FAR_OFF = 4;
const FITS = 2;
const MINUTE = Math.log(60);

/**
 * Runs whose time may be in minutes, and whose temperature may be in °F.
 *
 * @param at - the place of the knowledge
 * @returns cautions with paths from `/knowledge`. A time may be in minutes where the prior finds it four
 * standard deviations off as it is, and within two as minutes
 */
export function oddRuns(at: string, prior: KnowledgePrior, entries: readonly Entry[]): readonly Caution[] {
  const runs = entries.map(({ run, at: place }) => [place, run] as const);
  const { asked, model, regression, logTime } = fitNotebook(`${at}/prior`, everything, prior, [], runs);
  const growth = growthOf(`${at}/prior`, prior.laws);
  return entries.flatMap(({ run, at: place }, i): readonly Caution[] => {
    const path = `/knowledge${place.slice(at.length)}`;
    const fahrenheit = fahrenheitCautions(run.temperatureC, `${path}/temperatureC`);
    if (fahrenheit.length > 0) return fahrenheit;
    const { outcome, timeS } = run;
    const said = readOutcome(place, timeS, outcome, growth);
    const read = asked[i];
    // A time of appearance does not rest on the time that was given.
    if (typeof said === "string" || outcome.kind === "appearance") return [];
    if (read === undefined || typeof read === "string") return [];
    // As a question: the numbers of dates and printed rows are those of a notebook with runs.
    const found = model.question(read);
    if (typeof found === "string") return [];
    const expected = logTime(found);
    const sd = Math.hypot(
      Math.sqrt(regression.along(found.row).variance + found.row.beside),
      OTHERWISE_LOG_SD,
    );
    const off = (said.log - expected) / sd;
    if (!(off < -FAR_OFF && Math.abs(off + MINUTE / sd) < FITS)) return [];
    const figures = { quantity: "timeS", limit: Math.exp(expected), actual: timeS, data: {} } as const;
    return [makeCaution(compensateSentences, "maybe-minutes", "warn", { path: `${path}/timeS`, ...figures })];
  });
}
