/*
 * The brew of a day file: from spoons to grams, pH, strength against the brew whose time is known, and a
 * time.
 */
import {
  brewPh,
  brewStrength,
  checkBrew,
  massOf,
  mixingSteps,
  type Baseline,
  type BrewPart,
  type BrewPh,
  type BrewStrength,
  type DeveloperBrew,
  type Compensation,
  type MassOfInput,
  type MixingStep,
  type SpoonedMass,
} from "../index.js";
import { inBrewFigures, PART_FIELDS, partsOf, timeOf, type Day } from "./day.js";
import { given, list, object, refuseOthers, text, type Fields, type Sound } from "./fields.js";
import { placed, type Places } from "./fault.js";
import { knownOf } from "./knownDay.js";
import type { Notes } from "./notes.js";

/** A brew and what is to be said of it. */
export interface BrewReport {
  readonly about?: string;
  readonly known: { readonly about?: string; readonly timeS: number; readonly temperatureC: number };
  /** there are notes, and they are of another known time */
  readonly unlearned?: true;
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

const FIELDS = ["about", "volumeMl", "temperatureC", "spoons", "reference", "ageH", "emulsion"];
const REFERENCE_FIELDS = ["about", "time", "temperatureC", "logSd", "volumeMl", "ingredients"];
const SPOON_FIELDS = ["ingredient", "spoons", "spoonMl", "heap", "grade", "tablets", "labelMg"];

/** The first fault is thrown. */
const first: Sound = (call) => call();

/**
 * The brew of a day: a bath that is made of it. Where its known time is that of the day, the day's laws and
 * notes are about it too.
 *
 * @param askedC - its temperature on the command line, which goes before that of the file
 */
export function brewReport(day: Day & { readonly brew: Fields }, notes?: Notes, askedC?: number): BrewReport {
  refuseOthers("/brew", day.brew, FIELDS, first);
  const brew = inBrewFigures("/brew", day.brew, first);
  const temperatureC =
    askedC ??
    (given(brew["temperatureC"], "/brew/temperatureC", {
      en: "the temperature",
      de: "die Temperatur",
    }) as number);
  const { known, knownAbout, from } = readReference(brew["reference"]);
  const spoons = partsOf(
    list(brew["spoons"], "/brew/spoons", { en: "the list of spoons", de: "die Liste der Löffel" }),
    "/brew/spoons",
    SPOON_FIELDS,
    first,
  ) as unknown as readonly MassOfInput[];
  const masses = spoons.map((spoon, i) => placed(spoonPlaces(`/brew/spoons/${i}`), () => massOf(spoon)));
  const today = {
    volumeMl: brew["volumeMl"],
    temperatureC,
    ingredients: spoons.map((spoon, i) => partOf(spoon, masses[i] as SpoonedMass)),
  } as unknown as DeveloperBrew;
  const isSame = isKnownTime(day.baseline, known);
  return placed(BREW_PLACES, () => {
    const ph = brewPh(today);
    const strength = brewStrength(from, today);
    const emulsion = brew["emulsion"] as Baseline["emulsion"];
    const own = { ...known, ...(emulsion === undefined ? {} : { emulsion }) };
    const asDay = isSame
      ? { ...day, baseline: { ...day.baseline, ...own } }
      : { ...day, baseline: own, laws: {} };
    const developer = { fields: { brew: today }, pointer: "/brew" };
    const { answer: timed } = knownOf({ ...asDay, developer }, isSame ? notes : undefined);
    const ageH = brew["ageH"] as number | undefined;
    const answer = timed({ temperatureC, strength, ...(ageH === undefined ? {} : { ageH }) });
    const checked = checkBrew(today);
    return {
      ...(brew["about"] === undefined ? {} : { about: text(brew["about"], "/brew/about") }),
      known: {
        ...(knownAbout === undefined ? {} : { about: knownAbout }),
        timeS: known.timeS,
        temperatureC: known.temperatureC,
      },
      ...(notes === undefined || isSame ? {} : { unlearned: true as const }),
      temperatureC,
      parts: spoons.map((part, i) => ({ ...(masses[i] as SpoonedMass), part })),
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

/** The brew whose time is known. */
function readReference(value: unknown): {
  readonly known: Baseline;
  readonly knownAbout?: string;
  readonly from: DeveloperBrew;
} {
  const at = "/brew/reference";
  const said = object(value, at, {
    en: "the brew whose time is known",
    de: "der Ansatz mit der bekannten Zeit",
  });
  refuseOthers(at, said, REFERENCE_FIELDS, first);
  given(said["temperatureC"], `${at}/temperatureC`, { en: "the temperature", de: "die Temperatur" });
  const timeS = timeOf(said["time"], `${at}/time`);
  const { about, temperatureC, logSd, volumeMl, ingredients } = inBrewFigures(at, said, first, timeS);
  const parts = partsOf(ingredients, `${at}/ingredients`, PART_FIELDS, first);
  return {
    known: { timeS, temperatureC, ...(logSd === undefined ? {} : { logSd }) } as unknown as Baseline,
    ...(about === undefined ? {} : { knownAbout: text(about, `${at}/about`) }),
    from: { volumeMl, ingredients: parts } as unknown as DeveloperBrew,
  };
}

/** Where the fields of a spoon are. */
const spoonPlaces = (pointer: string): Places => [
  ...SPOON_FIELDS.map((field) => [`/${field}`, `${pointer}/${field}`] as const),
  ["/tablet", pointer],
  ["/input", pointer],
];

/** A spoon as a part of the brew: tablets are counted by their label. */
function partOf(spoon: MassOfInput, { value, low, high }: SpoonedMass): BrewPart {
  if (spoon.ingredient === "ascorbic-acid-tablet") return spoon;
  const { grade: _grade, ...held } = spoon;
  return { ...held, massG: value, lowG: low, highG: high };
}

/** Whether the known time of the brew is that of the day. */
const isKnownTime = (day: Baseline, own: Baseline): boolean =>
  day.timeS === own.timeS && day.temperatureC === own.temperatureC;
