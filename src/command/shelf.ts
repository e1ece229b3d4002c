/*
 * darkroom-kinetics brew: what can be brewed from what is on the shelf, and a first time for it.
 */
import {
  describeCautions,
  describeMixing,
  formatTemperature,
  formatTime,
  parseTemperature,
  parseVolume,
  proposeBrew,
  roundEstimate,
  roundSpoons,
  type BrewMaterial,
  type Caution,
  type MixingStep,
  type NoBrew,
  type ProposalInput,
  type ProposedBrew,
  type RoundedEstimate,
  type SpoonedAmount,
} from "../index.js";
import { Z90 } from "../core/estimate.js";
import { stripStepS } from "../quantities/stripStepS.js";
import { inFigures, type Parsers } from "./day.js";
import { given, object, text, type Fields } from "./fields.js";
import type { Document } from "./document.js";
import { placed } from "./fault.js";
import { clock, longest, safetyIn } from "./lines.js";
import type { Asked } from "./options.js";
import type { Words } from "./words.js";

/** What the shelf gives, or why it gives nothing. */
export interface ShelfReport {
  readonly file: string;
  readonly about?: string;
  readonly volumeMl: number;
  readonly temperatureC: number;
  readonly material: BrewMaterial;
  /** a spoon is used, and no scales */
  readonly spooned: boolean;
  readonly proposal: (ProposedBrew & { readonly rounded: RoundedEstimate }) | NoBrew;
}

/** What is read as people write it: "0.5 l", "57 °F". */
const PARSERS: Parsers = {
  volumeMl: (said) => parseVolume(said),
  temperatureC: (said) => parseTemperature(said),
  spoonMl: (said) => parseVolume(said),
};

/** A file is the shelf itself, a list; or an object that says besides how much, how warm and for what. */
export function shelfReport({ file, value }: Document, asked: Asked): ShelfReport {
  const whole = Array.isArray(value);
  const fields: Fields = whole ? { shelf: value } : object(value, "", { en: "the file", de: "die Datei" });
  const { about, ...rest } = fields;
  given(rest["shelf"], "/shelf", { en: "the list of what is on the shelf", de: "die Liste des Vorrats" });
  const said = inFigures("", rest, (call) => call(), PARSERS);
  const [temperatureC = said["temperatureC"] ?? 20] = asked.temperaturesC;
  const { volumeMl = said["volumeMl"] } = asked;
  given(volumeMl, "", {
    en: 'how much to brew, as volumeMl in the file or --volume "500 ml",',
    de: 'die Menge des Ansatzes, als volumeMl in der Datei oder --volume "500 ml",',
  });
  const material = asked.only.material ?? said["material"] ?? "film";
  const input = { ...said, volumeMl, temperatureC, material } as unknown as ProposalInput & {
    readonly temperatureC: number;
    readonly material: BrewMaterial;
  };
  const places = [
    ["/input/shelf", whole ? "" : "/shelf"],
    ["/input", ""],
  ] as const;
  const proposal = placed(places, () => proposeBrew(input));
  return {
    file,
    ...(about === undefined ? {} : { about: text(about, "/about") }),
    volumeMl: input.volumeMl,
    temperatureC: input.temperatureC,
    material: input.material,
    spooned: input.spoonMl !== undefined,
    proposal:
      proposal.brew === undefined ? proposal : { ...proposal, rounded: roundEstimate(proposal.start) },
  };
}

/** What is unwise about a shelf; one that gives no brew is as unwise as a stop. */
export function shelfCautions({ proposal }: ShelfReport): readonly Pick<Caution, "severity">[] {
  return proposal.brew === undefined ? [{ severity: "stop" }, ...proposal.cautions] : proposal.cautions;
}

export function shelfLines(report: ShelfReport, words: Words): readonly string[] {
  const { about, volumeMl, temperatureC, material, proposal } = report;
  const { figure, shelf } = words;
  const degrees = figure(formatTemperature(temperatureC, words));
  return [
    shelf.heading(figure(String(volumeMl)), degrees, material),
    ...(about === undefined ? [] : [`  ${about}`]),
    ...(proposal.brew === undefined ? noBrewLines(proposal, words) : brewLines(report, proposal, words)),
    "",
    safetyIn(words),
  ];
}

function brewLines(
  report: ShelfReport,
  proposed: ProposedBrew & { rounded: RoundedEstimate },
  words: Words,
): readonly string[] {
  const { spoons, lifeH, capacityCm2, strip, steps, cautions, rounded } = proposed;
  const { spooned } = report;
  const { figure, shelf } = words;
  const { timeS, lowS, highS } = rounded;
  const stepS = stripStepS(proposed.start);
  // What belongs to a step stands there; what is grave is told before the first step too.
  const there = new Set(steps.flatMap(({ cautions: own = [] }) => own.map(({ message }) => message)));
  const listed = cautions.filter(({ severity, message }) => severity !== "note" || !there.has(message));
  return [
    ...amountLines(spoons, spooned, words),
    `  ${shelf.begin(clock(timeS, words), clock(lowS, words), clock(highS, words))}`,
    `  ${shelf.strip(strip.map((one) => formatTime(one, { stepS })).join(", "))}`,
    `  ${shelf.lives(figure(String(Number(lifeH.toPrecision(2)))), figure(String(Math.floor(capacityCm2))))}`,
    ...cautionLines(listed, words),
    ...describeMixing(spooned ? steps : steps.map(weighed), words.texts?.mixing, words).map(
      (said, i) => `    ${i + 1}. ${said}`,
    ),
    ...copyLines(report, proposed, words),
  ];
}

/** A step for those who have scales. */
function weighed({ spoons: _spoons, spoonMl: _spoonMl, heap: _heap, ...step }: MixingStep): MixingStep {
  return step;
}

/** The first time as a file has it: with how sure it is, which as a found time it would not be. */
function copyLines(
  { temperatureC, material }: ShelfReport,
  { brew, start, rounded: { timeS, stepS } }: ProposedBrew & { rounded: RoundedEstimate },
  { shelf }: Words,
): readonly string[] {
  const logSd = Number((Math.log(start.highS / start.lowS) / (2 * Z90)).toPrecision(2));
  const known = { temperatureC, logSd };
  const emulsion = material === "plate" ? { emulsion: "soft" } : {};
  const ingredients = brew.ingredients.map((part) =>
    part.ingredient === "ascorbic-acid-tablet"
      ? part
      : { ingredient: part.ingredient, massG: Number(part.massG.toPrecision(4)) },
  );
  const day = {
    baseline: { time: formatTime(timeS, { stepS }), ...known, ...emulsion },
    developer: { brew: { volumeMl: brew.volumeMl, temperatureC, ingredients } },
  };
  const baseline = onOneLine({ timeS, ...known });
  return [
    `  ${shelf.forDay}`,
    `    ${onOneLine(day)}`,
    `  ${shelf.forRecipe}`,
    `    "baseline": ${baseline}`,
  ];
}

/** Data as a file has it, on one line. */
const onOneLine = (data: object): string => JSON.stringify(data, undefined, 1).replace(/\n */g, " ");

/** What to take of each: its name, how it is measured, and its grams, in columns. */
function amountLines(amounts: readonly SpoonedAmount[], spooned: boolean, words: Words): readonly string[] {
  const rows = amounts.map((amount) => [
    words.ingredient(amount.ingredient),
    measured(amount, spooned, words),
    amount.volumeMl === undefined ? `${words.figure(amount.massG.toFixed(1))} g` : "",
  ]);
  const width = (column: number): number => longest(rows.map((row) => row[column] as string));
  return rows.map(([name = "", by = "", grams = ""]) => {
    const middle = width(1) === 0 ? "" : `${by.padEnd(width(1))}  `;
    return `    ${name.padEnd(width(0))}  ${middle}${grams.padStart(width(2))}`.trimEnd();
  });
}

/** An amount in what a kitchen can measure; on scales its grams are enough. */
function measured(amount: SpoonedAmount, spooned: boolean, words: Words): string {
  const { spoons, spoonMl, tablets, labelMg, solutionMl, solutionPercent, volumeMl } = amount;
  const ml = (volume: number): string => `${words.figure(String(volume))} ml`;
  if (volumeMl !== undefined) return ml(volumeMl);
  if (tablets !== undefined && labelMg !== undefined) return words.tablets(tablets, labelMg);
  if (solutionMl !== undefined && solutionPercent !== undefined)
    return words.shelf.solution(ml(solutionMl), solutionPercent);
  if (!spooned || spoons === undefined || spoonMl === undefined) return "";
  return `${words.spoons(roundSpoons(spoons), "level")} × ${ml(spoonMl)}`;
}

function noBrewLines({ reason, message, add, cautions }: NoBrew, words: Words): readonly string[] {
  const { shelf, texts, ingredient } = words;
  const isWater = add === "more-bath" || add === "warm-water" || add === "cool-water";
  return [
    `  ${shelf.none} ${texts?.noBrew[reason] ?? message}`,
    `  ${shelf.helps(isWater ? shelf.water[add] : ingredient(add))}`,
    ...cautionLines(cautions, words),
  ];
}

function cautionLines(cautions: readonly Caution[], words: Words): readonly string[] {
  const plain = cautions.map((one) => ({ ...one, path: "" }));
  return describeCautions(plain, words.texts?.cautions, words).map((line) => `  ${line}`);
}
