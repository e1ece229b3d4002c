/*
 * Module: recipe. What is valid but unwise: the cautions of every module, with their paths in the recipe.
 */
import { bathCautions } from "../process/bathCautions.js";
import { bathCapacity } from "../bath/bathCapacity.js";
import { bathVerdict } from "../bath/bathVerdict.js";
import { useOf } from "../bath/useOf.js";
import type { UseLaw } from "../use/useFactor.js";
import { ownAge } from "../age/ownAge.js";
import { lifeOfBrew } from "../bath/lifeOfBrew.js";
import type { TimeEstimate } from "../core/estimate.js";
import { gravestFirst, type Caution } from "../core/caution.js";
import { present } from "../core/ordered.js";
import type { Dilution } from "../dilution/dilution.js";
import { safelightCautions } from "../inspection/safelightCautions.js";
import type { Compensation } from "../compensate/types.js";
import { emulsionOf } from "../temperature/emulsionOf.js";
import { brewCautions as cautionsOfBrew } from "../process/brewNotes.js";
import { carbonateIn } from "../process/carbonateIn.js";
import type { PlannedDeveloper } from "../process/types.js";
import { placed, placeOf } from "./places.js";
import type { Recipe } from "./types.js";

/** Today's bath; what the conditions leave out is as in the baseline. */
function today({ baseline, conditions = {} }: Recipe): {
  readonly temperatureC: number;
  readonly usedCm2PerL: number;
  readonly ageH: number;
} {
  const stated = { ...baseline, ...present(conditions) };
  const { temperatureC = baseline.temperatureC, usedCm2PerL = 0, ageH = 0 } = stated;
  return { temperatureC, usedCm2PerL, ageH };
}

/** Volume of the bath. */
export const bathMl = (developer: Recipe["developer"]): number | undefined =>
  developer.kind === "brew" ? developer.brew.volumeMl : developer.volumeMl;

/** Whether a developer holds carbonate; of a stock nobody can tell. */
export const carbonateOf = (developer: Recipe["developer"]): boolean | undefined =>
  developer.kind === "brew" ? carbonateIn("checkRecipe/developer/brew", developer.brew) : undefined;

/** The emulsion of a recipe: its material's own, else that of the known time, else a plate's. */
export function emulsionIn({ material, baseline }: Recipe): "soft" | "hardened" | undefined {
  const { kind, emulsion = baseline.emulsion } = material;
  return emulsionOf(kind, emulsion);
}

/**
 * The cautions of the brew module about a recipe's brew, as it was mixed and at the bath's temperature,
 * without what holds for every brew; throws what is wrong with the brew.
 */
export function brewCautions(recipe: Recipe): readonly Caution[] {
  const { developer, material } = recipe;
  if (developer.kind !== "brew") return [];
  const { ageH, temperatureC } = today(recipe);
  const use = {
    ageH,
    ...(material.iso === undefined ? {} : { filmIso: material.iso }),
    material: material.kind,
    softEmulsion: emulsionIn(recipe) === "soft",
  };
  return cautionsOfBrew(developer.brew, temperatureC, use);
}

/**
 * The cautions about the bath that develops, beside those that were found already. A plan says itself whether
 * there is enough of it.
 */
export function developerCautions(
  recipe: Recipe,
  answer: Compensation,
  ofBrew: readonly Caution[],
  planned = false,
): readonly Caution[] {
  const { developer } = recipe;
  const { cautions: known } = answer;
  const judged = bathAsItIs(recipe, answer);
  const enough = planned ? [] : enoughBath(recipe);
  // Two modules know of a dead bath, and of a full one; both put it in the same place.
  const found = [...judged, ...enough.filter(({ code }) => !judged.some((one) => one.code === code))].filter(
    ({ code }) => !known.some((one) => one.code === code),
  );
  if (developer.kind !== "brew") return found;
  // Beside the life that the recipe states, and past any, what brews in general live to is no news.
  const stated = recipe.knowledge?.age?.kind === "life";
  const dead = stated || [...known, ...found].some(({ code }) => code === "bath-past-life");
  const frail = [...known, ...found].some(({ code }) => code === "bath-may-fail");
  for (const one of ofBrew)
    if (!(one.code === "bath-past-life" && (dead || (frail && one.severity === "warn"))))
      found.push({
        ...one,
        // Age is said of the conditions; all else of the brew.
        path: one.path === "/ageH" ? placeOf(recipe, "/conditions/ageH") : `/developer/brew${one.path ?? ""}`,
      });
  return found;
}

/** The cautions of all modules about a recipe that is valid, gravest first, each once. */
export function recipeCautions(
  recipe: Recipe,
  answer: Compensation,
  ofBrew: readonly Caution[],
  planned = false,
): readonly Caution[] {
  const { developer, material, baths } = recipe;
  const found: Caution[] = [...answer.cautions, ...developerCautions(recipe, answer, ofBrew, planned)];
  if (recipe.byInspection === true)
    for (const one of safelightCautions(material.sensitization ?? "panchromatic"))
      found.push({ ...one, path: "/byInspection" });
  if (baths !== undefined)
    found.push(
      ...bathCautions({
        temperatureC: today(recipe).temperatureC,
        baths,
        volumeMl: bathMl(developer),
        areaCm2: material.areaCm2,
        material: material.kind,
        iodideRich: material.iodideRich,
        emulsion: emulsionIn(recipe),
        carbonate: carbonateOf(developer),
      }),
    );
  return gravestFirst(found);
}

/** Dilution of today's bath. */
export const dilutionOf = ({ developer, conditions = {} }: Recipe): Dilution | string | undefined =>
  conditions.dilution ?? (developer.kind === "stock" ? developer.dilution : undefined);

/** The rule of use of a recipe; undefined where the generic one serves. */
export const useIn = ({ material, knowledge = {} }: Recipe): UseLaw | undefined =>
  useOf((material as Partial<Recipe>["material"])?.kind, knowledge.use);

/** What a recipe knows of its bath, for how much that can develop. */
export function bathFacts(recipe: Recipe): PlannedDeveloper {
  const { developer } = recipe;
  const { capacityCm2PerL } = developer;
  const { usedCm2PerL } = today(recipe);
  const use = useIn(recipe);
  if (developer.kind === "brew") return { brew: developer.brew, use, capacityCm2PerL, usedCm2PerL };
  const { family, leastMlPerRoll } = developer;
  return { family, leastMlPerRoll, use, capacityCm2PerL, usedCm2PerL };
}

/** The verdict on the bath as it is. */
function bathAsItIs(recipe: Recipe, { timeS, highS }: TimeEstimate): readonly Caution[] {
  const { developer, knowledge = {} } = recipe;
  const age = ownAge(knowledge.age) ?? lifeOfBrew(developer.kind === "brew" ? developer.brew : undefined);
  const { usedCm2PerL, ageH } = today(recipe);
  const { keepingLimitH, capacityCm2PerL } = developer;
  const { cautions } = bathVerdict({
    usedCm2PerL,
    ageH,
    dilution: dilutionOf(recipe),
    use: useIn(recipe),
    age,
    capacityCm2PerL,
    keepingLimitH,
    timeS,
    highS,
  });
  // Rules for any bath are told of by compensate, where the conditions name the use.
  return cautions
    .filter(({ code }) => code !== "default-law" && code !== "bath-well-used")
    .map((one) => placed(recipe, { ...one, path: `/conditions${one.path ?? ""}` }));
}

/** Whether the bath is enough for the recipe's material. */
function enoughBath(recipe: Recipe): readonly Caution[] {
  const { developer, material } = recipe;
  const volumeMl = bathMl(developer);
  if (volumeMl === undefined) return [];
  const places: Readonly<Record<string, string>> = {
    "/areaCm2": "/material/areaCm2",
    "/volumeMl": developer.kind === "stock" ? "/developer/volumeMl" : "/developer/brew/volumeMl",
    "/usedCm2PerL": placeOf(recipe, "/conditions/usedCm2PerL"),
  };
  const enough = bathCapacity({
    volumeMl,
    dilution: dilutionOf(recipe),
    areaCm2: material.areaCm2,
    material: material.kind,
    ...bathFacts(recipe),
  });
  return enough.cautions.map((one) => ({ ...one, path: places[one.path ?? ""] ?? "/developer" }));
}
