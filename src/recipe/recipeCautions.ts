/*
 * Module: recipe. What is valid but unwise: the cautions of every module, with their paths in the recipe.
 */
import { bathCautions } from "../process/bathCautions.js";
import { bathCapacity } from "../bath/bathCapacity.js";
import { bathVerdict } from "../bath/bathVerdict.js";
import { checkBrew } from "../brew/checkBrew.js";
import { gravestFirst, type Caution } from "../core/caution.js";
import { safelightCautions } from "../inspection/safelightCautions.js";
import type { Compensation } from "../compensate/types.js";
import { placed, placeOf } from "./places.js";
import type { Recipe } from "./types.js";

/** Today's bath; what the conditions leave out is as in the baseline. */
function today({ baseline, conditions = {} }: Recipe): {
  readonly temperatureC: number;
  readonly usedCm2PerL: number;
  readonly ageH: number;
} {
  const { temperatureC = baseline.temperatureC, usedCm2PerL = 0, ageH = 0 } = { ...baseline, ...conditions };
  return { temperatureC, usedCm2PerL, ageH };
}

const bathMl = (developer: Recipe["developer"]): number | undefined =>
  developer.kind === "brew" ? developer.brew.volumeMl : developer.volumeMl;

/**
 * The cautions of the brew module about a recipe's brew, as it was mixed and at the bath's temperature;
 * throws what is wrong with the brew.
 */
export function brewCautions(recipe: Recipe): readonly Caution[] {
  const { developer, material } = recipe;
  if (developer.kind !== "brew") return [];
  const { ageH, temperatureC } = today(recipe);
  const use = {
    ageH,
    ...(material.iso === undefined ? {} : { filmIso: material.iso }),
    softEmulsion: material.emulsion === "soft",
  };
  const { brew } = developer;
  // The constants of the brew module hold to 50 °C.
  const inBath = checkBrew({ ...brew, temperatureC: Math.min(50, temperatureC) }, use);
  if (brew.temperatureC === undefined) return inBath;
  const mixed = checkBrew(brew, use);
  return [...mixed, ...inBath.filter(({ code }) => !mixed.some((one) => one.code === code))];
}

/** The cautions about the bath that develops, beside those that were found already. */
export function developerCautions(
  recipe: Recipe,
  known: readonly Caution[],
  ofBrew: readonly Caution[],
): readonly Caution[] {
  const { developer } = recipe;
  // Two modules know of a dead bath, and of a full one; both put it in the same place.
  const found = usedBath(recipe).filter(({ code }) => !known.some((one) => one.code === code));
  if (developer.kind !== "brew") return found;
  // Past the life that the recipe states, what brews in general live to is no news.
  const dead = [...known, ...found].some(({ code }) => code === "bath-past-life");
  for (const one of ofBrew)
    if (!(dead && one.code === "bath-past-life"))
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
): readonly Caution[] {
  const { developer, material, baths } = recipe;
  const found: Caution[] = [...answer.cautions, ...developerCautions(recipe, answer.cautions, ofBrew)];
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
        emulsion: material.emulsion,
      }),
    );
  return gravestFirst(found);
}

/** The verdict on the bath as it is, and whether it is enough for the recipe's material. */
function usedBath(recipe: Recipe): readonly Caution[] {
  const { developer, material, conditions = {}, knowledge = {} } = recipe;
  const { use, age } = knowledge;
  const { usedCm2PerL, ageH } = today(recipe);
  const { keepingLimitH, capacityCm2PerL } = developer;
  const { dilution = developer.kind === "stock" ? developer.dilution : undefined } = conditions;
  const { cautions } = bathVerdict({
    usedCm2PerL,
    ageH,
    dilution,
    use,
    age,
    capacityCm2PerL,
    keepingLimitH,
  });
  // A rule for any bath is told of by compensate, where the conditions name the use.
  const found = cautions
    .filter(({ code }) => code !== "default-law")
    .map((one) => placed(recipe, { ...one, path: `/conditions${one.path ?? ""}` }));
  const volumeMl = bathMl(developer);
  if (volumeMl === undefined) return found;
  const stock = developer.kind === "stock";
  const places: Readonly<Record<string, string>> = {
    "/areaCm2": "/material/areaCm2",
    "/volumeMl": stock ? "/developer/volumeMl" : "/developer/brew/volumeMl",
    "/usedCm2PerL": placeOf(recipe, "/conditions/usedCm2PerL"),
  };
  const enough = bathCapacity({
    volumeMl,
    dilution,
    use,
    capacityCm2PerL,
    usedCm2PerL,
    areaCm2: material.areaCm2,
    material: material.kind,
    ...(stock
      ? { family: developer.family, leastMlPerRoll: developer.leastMlPerRoll }
      : { brew: developer.brew }),
  });
  for (const one of enough.cautions)
    if (!found.some(({ code }) => code === one.code))
      found.push({ ...one, path: places[one.path ?? ""] ?? "/developer" });
  return found;
}
