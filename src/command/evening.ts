/*
 * The evening of a day: several plates or films from one bath.
 */
import {
  describeCautions,
  describeEvening,
  filmAreaCm2,
  parseTime,
  parseVolume,
  planEvening,
  usualVessel,
  type BrewMaterial,
  type Caution,
  type EveningInput,
  type EveningPlan,
} from "../index.js";
import { unreadFields } from "../core/pointer.js";
import { inFigures, type Day, type DayBath, type Parsers } from "./day.js";
import { list, object, type Fields } from "./fields.js";
import { placed, type Places } from "./fault.js";
import type { KnownDay } from "./knownDay.js";
import { vesselMeant, type Asked } from "./options.js";
import { askedConditions, inPlace } from "./time.js";
import type { Words } from "./words.js";

/** The plan of an evening. */
export interface EveningReport {
  readonly file: string;
  readonly name: string;
  readonly evening: EveningPlan;
  /** what is unwise about the file itself */
  readonly cautions: readonly Caution[];
}

/** Times of a plan are kept by a clock: to five seconds, unless the evening says otherwise. */
const STEP_S = 5;

/** What the day says for all its baths: in the evening it is not read. */
const OF_THE_DAY: readonly string[] = ["baseline", "conditions", "knowledge"];

/** What is read as people write it: "0.5 l", "3:00", "9x12cm". */
const PARSERS: Parsers = {
  volumeMl: (text) => parseVolume(text),
  topUpMl: (text) => parseVolume(text),
  betweenS: (text) => parseTime(text),
  areaCm2: filmAreaCm2,
  vessel: vesselMeant,
};

/** The fields of a part, those in words read; the first fault is thrown. */
const read = (pointer: string, part: Fields): Fields => inFigures(pointer, part, (call) => call(), PARSERS);

function readPlate(given: unknown, i: number): Fields {
  const pointer = `/evening/plates/${i}`;
  const plate = read(pointer, object(given, pointer, { en: "a plate", de: "eine Platte" }));
  const own = plate["conditions"];
  if (own === undefined) return plate;
  const place = `${pointer}/conditions`;
  const conditions = object(own, place, { en: "its conditions", de: "ihre Bedingungen" });
  return { ...plate, conditions: inFigures(place, conditions, (call) => call()) };
}

/** Plans the evening of a day; the bath is the one that is asked for. */
export function eveningReport(
  file: string,
  day: KnownDay & { readonly evening: Fields },
  bath: DayBath | undefined,
  asked: Asked,
): EveningReport {
  const { known: baseline, knowledge, developer } = day;
  const plates = list(day.evening["plates"], "/evening/plates", {
    en: "the list of plates",
    de: "die Liste der Platten",
  }).map(readPlate);
  const { vessel, material, ...evening } = read("/evening", day.evening);
  const usual =
    material === undefined
      ? undefined
      : placed([["", "/evening/material"]], () => usualVessel(material as BrewMaterial));
  const input = {
    stepS: STEP_S,
    ...evening,
    ...(developer === undefined ? {} : { developer: developer.fields }),
    material,
    vessel: asked.vessel ?? vessel ?? usual,
    ...(asked.volumeMl === undefined ? {} : { volumeMl: asked.volumeMl }),
    baseline,
    knowledge,
    conditions: { ...bath?.conditions, ...askedConditions(asked) },
    plates,
  } as unknown as EveningInput;
  const own = Object.keys(day.evening).filter((field) => !OF_THE_DAY.includes(field));
  const pointer = bath?.pointer ?? "/baths";
  return {
    file,
    name: bath?.name ?? "",
    evening: placed(placesOf("/input", pointer, day), () => planEvening(input)),
    cautions: [...day.cautions, ...unreadFields("/evening", day.evening, own)],
  };
}

/** Where a day has what an evening is planned from. */
function placesOf(input: string, bath: string, { developer }: Pick<Day, "developer">): Places {
  return [
    ...(developer === undefined ? [] : [[`${input}/developer`, developer.pointer] as const]),
    [`${input}/baseline/timeS`, "/baseline/time"],
    [`${input}/baseline`, "/baseline"],
    [`${input}/conditions`, bath],
    [`${input}/knowledge`, "/laws"],
    [input, "/evening"],
  ];
}

/** What is unwise about each plate, and about the one that cannot be developed. */
export function plateCautions({ evening: { plates, stopped } }: EveningReport): readonly Caution[] {
  const all = stopped === undefined ? plates : [...plates, stopped];
  return all.flatMap(({ answer, plan }) => [...answer.cautions, ...plan.cautions]);
}

/** What is unwise about an evening in the first bath of a day, at its place in the file. */
export function eveningCautions(report: EveningReport, { eveningDeveloper }: Day): readonly Caution[] {
  const places = placesOf(
    "",
    "/baths/0",
    eveningDeveloper === undefined ? {} : { developer: eveningDeveloper },
  );
  return [...report.cautions, ...inPlace(plateCautions(report), "", places)];
}

export function eveningLines({ name, evening, cautions }: EveningReport, words: Words): readonly string[] {
  return [
    ...(name === "" ? [] : [name]),
    ...describeCautions(cautions, words.texts?.cautions, words),
    ...describeEvening(evening, words.texts?.evening, words),
  ];
}
