/*
 * Room: recipe. Values that are each in range and do not go together. The rooms know their own rules: each is
 * asked, and what it throws becomes a problem with a path.
 */
import { isInputError } from "../core/errors.js";
import { agitationFactor } from "../agitation/agitationFactor.js";
import { ageFactor } from "../age/ageFactor.js";
import { genericGrowthLaw } from "../contrast/genericGrowthLaw.js";
import { timeForGamma } from "../contrast/timeForGamma.js";
import { dilutionFactor } from "../dilution/dilutionFactor.js";
import { temperatureFactor } from "../temperature/temperatureFactor.js";
import { useFactor } from "../use/useFactor.js";
import type { Recipe, RecipeProblem } from "./types.js";

/**
 * Asks a room and turns its refusal into a problem at `path`, or at the field below it that the refusal
 * names; `more` is added to what it says.
 */
export function ask<T>(problems: RecipeProblem[], path: string, call: () => T, more = ""): T | undefined {
  try {
    return call();
  } catch (error) {
    if (!isInputError(error)) throw error;
    // The first name in its path is that of the argument, which stands at `path` here.
    const field = error.path
      .split("/")
      .slice(2)
      .map((key) => `/${key}`)
      .join("");
    const sentence = error.message.slice(error.message.indexOf(" must ") + 1);
    problems.push({ path: path + field, message: sentence + more, rule: "relation" });
    return undefined;
  }
}

/** The problems of a recipe whose shape is right, apart from those of its brew. */
export function relationProblems({
  baseline,
  conditions = {},
  knowledge = {},
}: Recipe): readonly RecipeProblem[] {
  const problems: RecipeProblem[] = [];
  const { temperature, dilution, agitation, use, age, growth = genericGrowthLaw } = knowledge;
  if (temperature !== undefined)
    ask(problems, "/knowledge/temperature", () => temperatureFactor(temperature, 20, 20));
  if (dilution !== undefined)
    ask(problems, "/knowledge/dilution", () => dilutionFactor("stock", "stock", dilution));
  if (agitation !== undefined)
    ask(problems, "/knowledge/agitation", () => agitationFactor("continuous", "continuous", agitation));
  for (const [side, { usedCm2PerL = 0, ageH = 0, gamma }] of Object.entries({ baseline, conditions })) {
    if (use !== undefined) ask(problems, `/${side}/usedCm2PerL`, () => useFactor(0, usedCm2PerL, use));
    // Past its life today a bath has no time, which is a caution; a known time past its life cannot have
    // been.
    if (age !== undefined && (age.kind === "half-life" || side === "baseline"))
      ask(problems, `/${side}/ageH`, () => ageFactor(0, ageH, age));
    // Without a wanted gradient nothing is worked out from the one that the known time gave; an own law has
    // to agree with it all the same.
    if (gamma === undefined || (conditions.gamma === undefined && knowledge.growth === undefined)) continue;
    ask(
      problems,
      `/${side}/gamma`,
      () => timeForGamma(growth, gamma),
      knowledge.growth ? "" : "; the limit is only assumed, as knowledge.growth is not given",
    );
  }
  if (conditions.gamma !== undefined && baseline.gamma === undefined)
    problems.push({
      path: "/baseline/gamma",
      message: "must be given, since a gradient is wanted: which one did the known time give?",
      rule: "relation",
    });
  return problems;
}
