/*
 * The brew of a day file: from spoons to grams, pH, strength against the brew whose time is known, and a
 * time.
 */
import {
  brewPh,
  brewStrength,
  checkBrew,
  compensate,
  massOf,
  mixingSteps,
  parseTime,
  type DeveloperBrew,
  type BrewPh,
  type BrewStrength,
  type Compensation,
  type MassOfInput,
  type MixingStep,
  type SpoonedMass,
} from "../index.js";
import { given, list, object, text, type Fields } from "./day.js";
import { placed, type Places } from "./fault.js";

/** A brew and what is to be said of it. */
export interface BrewReport {
  readonly about?: string;
  readonly known: { readonly about?: string; readonly timeS: number; readonly temperatureC: number };
  readonly temperatureC: number;
  readonly parts: readonly (SpoonedMass & { readonly part: MassOfInput })[];
  readonly ph: BrewPh;
  readonly strength: BrewStrength;
  readonly answer: Compensation;
  readonly steps: readonly MixingStep[];
}

/** Where a day has what the package calls a brew, its known time and its conditions. */
export const BREW_PLACES: Places = [
  ["/brew/ingredients", "/brew/spoons"],
  ["/to/ingredients", "/brew/spoons"],
  ["/from/ingredients", "/brew/reference/ingredients"],
  ["/brew", "/brew"],
  ["/to", "/brew"],
  ["/from", "/brew/reference"],
  ["/conditions", "/brew"],
  ["/baseline/timeS", "/brew/reference/time"],
  ["/baseline", "/brew/reference"],
];

export function brewReport(brew: Fields): BrewReport {
  const reference = object(brew["reference"], "/brew/reference", {
    en: "the brew whose time is known",
    de: "der Ansatz mit der bekannten Zeit",
  });
  const temperatureC = given(brew["temperatureC"], "/brew/temperatureC", {
    en: "the temperature",
    de: "die Temperatur",
  }) as number;
  const knownC = given(reference["temperatureC"], "/brew/reference/temperatureC", {
    en: "the temperature",
    de: "die Temperatur",
  }) as number;
  const time = given(reference["time"], "/brew/reference/time", {
    en: "the known time",
    de: "die bekannte Zeit",
  }) as string;
  const timeS = placed([["/text", "/brew/reference/time"]], () => parseTime(time));
  const spoons = list(brew["spoons"], "/brew/spoons", {
    en: "the list of spoons",
    de: "die Liste der Löffel",
  }).map(
    (spoon, i) =>
      object(spoon, `/brew/spoons/${i}`, { en: "a spoon", de: "ein Löffel" }) as unknown as MassOfInput,
  );
  const masses = spoons.map((spoon, i) => placed([["/input", `/brew/spoons/${i}`]], () => massOf(spoon)));
  const today = {
    volumeMl: brew["volumeMl"],
    temperatureC,
    ingredients: spoons.map((spoon, i) => {
      const { value, low, high } = masses[i] as SpoonedMass;
      return { ...spoon, massG: value, lowG: low, highG: high };
    }),
  } as unknown as DeveloperBrew;
  const { volumeMl, ingredients } = reference as unknown as DeveloperBrew;
  return placed(BREW_PLACES, () => {
    const ph = brewPh(today);
    const strength = brewStrength({ volumeMl, ingredients }, today);
    const answer = compensate({ timeS, temperatureC: knownC }, { temperatureC, strength });
    const checked = checkBrew(today);
    const about = brew["about"] === undefined ? {} : { about: text(brew["about"], "/brew/about") };
    const knownAbout = reference["about"];
    return {
      ...about,
      known: {
        ...(knownAbout === undefined ? {} : { about: text(knownAbout, "/brew/reference/about") }),
        timeS,
        temperatureC: knownC,
      },
      temperatureC,
      parts: spoons.map((spoon, i) => ({
        ...(masses[i] as SpoonedMass),
        part: spoon,
      })),
      ph,
      strength,
      // What stops the brew stops its time.
      answer: {
        ...answer,
        refused: answer.refused || checked.some(({ severity }) => severity === "stop"),
        cautions: [...answer.cautions, ...checked],
      },
      steps: mixingSteps(today),
    };
  });
}
