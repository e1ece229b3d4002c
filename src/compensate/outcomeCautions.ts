import type { Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import type { AnyPair } from "../core/pair.js";
import { fieldsOfLaw, type AnyCause } from "../core/cause.js";
import type { TimeEstimate } from "../core/estimate.js";
import { frozen } from "../core/frozen.js";
import { unreadFields } from "../core/pointer.js";
import { ORIGIN_FIELDS } from "../core/term.js";
import { defaultLawSentence } from "../core/text.js";
import { pushAndContrast } from "../push/pushAndContrast.js";
import { marks } from "./marks.js";
import { compensateSentences } from "./text.js";
import type { Worked } from "./rows.js";
import type { Baseline, Conditions, Knowledge } from "./types.js";
import { unusualLaws } from "./unusualLaws.js";

/** The shortest time that develops evenly, s: five minutes (makers' notes on tanks, common practice). */
const SHORTEST_S = 300;

/** The longest time that is still usable, s: two hours, beyond stand development (common practice). */
const LONGEST_S = 7200;

/** A known time below this was perhaps meant in minutes, s. */
const MINUTES_BELOW_S = 60;

/** From this ratio of its ends on, an interval is wide. */
const WIDE = 1.5;

const OWN_BASELINE_FIELDS = [
  "timeS",
  "logSd",
  "runs",
  "before",
  "moved",
  "sources",
  "hydroquinone",
  "emulsion",
];
/** What learned knowledge holds besides its laws. */
const LEARNED_FIELDS = ["schema", "prior", "runs", "baseline", "parameters", "scatter", "setAside", "advice"];

/**
 * Adds the cautions about an answer as a whole; `guessed` names what rests on a generic law, in the order of
 * the rows.
 */
export type OutcomeJudge = (
  cautions: Caution[],
  estimate: TimeEstimate,
  guessed: readonly string[],
  worked: readonly Worked[],
  conditions: Conditions,
) => void;

/**
 * Makes the function that adds the cautions about an answer as a whole: its length, its width, what it rests
 * on. What depends on the known time and the laws alone is worked out once.
 */
export function outcomeJudge(
  baseline: Baseline,
  knowledge: Knowledge,
  together: boolean,
  ofKnown: readonly Caution[],
): OutcomeJudge {
  const unusual = unusualLaws(knowledge);
  const standing = frozen([...ofKnown, ...standingCautions(baseline, knowledge, together)]);
  // The same causes rest on generic laws from call to call: the caution about them is written once.
  let lastGuessed: readonly string[] = [];
  let written: Caution | undefined;
  return (cautions, { timeS, lowS, highS }, guessed, worked, conditions) => {
    if (timeS < SHORTEST_S)
      cautions.push(
        makeCaution(compensateSentences, "short-time", "warn", {
          quantity: "timeS",
          limit: SHORTEST_S,
          actual: timeS,
        }),
      );
    if (timeS > LONGEST_S)
      cautions.push(
        makeCaution(compensateSentences, "long-time", "warn", {
          quantity: "timeS",
          limit: LONGEST_S,
          actual: timeS,
        }),
      );
    if (highS > WIDE * lowS)
      cautions.push(
        makeCaution(compensateSentences, "wide-interval", "warn", {
          quantity: "ratio",
          limit: WIDE,
          actual: Math.min(Number.MAX_VALUE, highS / lowS),
        }),
      );
    if (guessed.length > 0) {
      if (written === undefined || !sameNames(guessed, lastGuessed)) written = defaultLaw(guessed);
      lastGuessed = guessed;
      cautions.push(written);
    }
    // A law through which nothing has changed is not used.
    for (const one of unusual)
      if (one.code !== "law-unusual" || worked.some((each) => !each.unchanged && uses(each, one.data.law)))
        cautions.push(one);
    for (const one of pushAndContrast(baseline, conditions)) cautions.push(one);
    for (const one of standing) cautions.push(one);
  };
}

const uses = ({ term }: Worked, law: string): boolean => term.cause.law === law;

function sameNames(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((name, i) => name === b[i]);
}

function defaultLaw(causes: readonly string[]): Caution {
  return frozen(makeCaution(defaultLawSentence, "default-law", "note", { data: { causes } }));
}

/** The caution about a known time that was perhaps meant in minutes. */
export function maybeMinutes(path: string, timeS: number): readonly Caution[] {
  const figures = { path, quantity: "timeS", limit: MINUTES_BELOW_S, actual: timeS, data: {} } as const;
  return timeS < MINUTES_BELOW_S ? [makeCaution(compensateSentences, "maybe-minutes", "warn", figures)] : [];
}

function standingCautions(baseline: Baseline, knowledge: Knowledge, together: boolean): readonly Caution[] {
  const cautions: Caution[] = [...maybeMinutes("/baseline/timeS", baseline.timeS)];
  if (knowledge.joint !== undefined && !together)
    cautions.push(makeCaution(compensateSentences, "other-baseline", "note", { path: "/baseline" }));
  return cautions;
}

/** The fields that a list of causes reads, worked out once for each list. */
interface ReadFields {
  readonly baseline: readonly string[];
  readonly conditions: readonly string[];
  readonly knowledge: readonly string[];
}

/** What an estimate says of a time besides its spread: nothing more where the spread is given. */
export const ESTIMATE_FIELDS: readonly string[] = ["lowS", "highS", "basis"];

/** The fields that a baseline may have. */
export function baselineFields(causes: readonly AnyCause[], baseline: Baseline): readonly string[] {
  const { baseline: fields } = readFields(causes);
  return baseline.logSd === undefined ? fields : [...fields, ...ESTIMATE_FIELDS];
}

const READ = new WeakMap<readonly AnyCause[], ReadFields>();

function readFields(causes: readonly AnyCause[]): ReadFields {
  let fields = READ.get(causes);
  if (fields === undefined) {
    const known = causes.filter(({ relative }) => relative !== true).map(({ field }) => field);
    fields = {
      baseline: [...known, ...OWN_BASELINE_FIELDS],
      conditions: [...causes, ...marks].map(({ field }): string => field),
      knowledge: [...causes.map(({ law }) => law), "batchLogSd", "joint"],
    };
    READ.set(causes, fields);
  }
  return fields;
}

/** Makes the function that gives a caution for each field of the arguments that is not read. */
export function unreadCautions(
  causes: readonly AnyCause[],
  pairs: readonly AnyPair[],
  baseline: Baseline,
  knowledge: Knowledge,
): (conditions: Conditions, named: number) => readonly Caution[] {
  const fields = readFields(causes);
  const own = [...fields.knowledge, ...pairs.map(({ law }) => law)];
  const laws = "schema" in knowledge ? [...own, ...LEARNED_FIELDS] : own;
  const ofBaseline = unreadFields("/baseline", baseline, baselineFields(causes, baseline));
  const ofKnowledge = [
    ...unreadFields("/knowledge", knowledge, laws),
    ...[...causes, ...pairs].flatMap(({ law, lawFields }) => {
      const given = (knowledge as Readonly<Record<string, object | undefined>>)[law];
      return given === undefined
        ? []
        : unreadFields(`/knowledge/${law}`, given, [...fieldsOfLaw(lawFields, given), ...ORIGIN_FIELDS]);
    }),
  ];
  const standing = [...ofBaseline, ...ofKnowledge];
  return (conditions, named) => {
    // As many fields as were read: there is no other.
    if (Object.keys(conditions).length === named) return standing;
    const ofConditions = unreadFields("/conditions", conditions, fields.conditions);
    return ofConditions.length === 0 ? standing : [...ofBaseline, ...ofConditions, ...ofKnowledge];
  };
}
