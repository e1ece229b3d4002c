/*
 * What is wrong with an input, in words: each sentence is made of the problem's own data, so that a catalogue
 * of the same shape says it in another language.
 */
import { show, type ExpectedFigures, type InputErrorCode, type InputExpected } from "../core/errors.js";
import type { InputRule, InputRuleTexts } from "../core/errorRules.js";
import { itemsText, mustText, rangeText, sideText, valuesText, wantedText } from "../core/errorText.js";

/** Something wrong with an input: an error, or a problem of any check. */
export interface InputProblem {
  /** what is wrong, stable for programs */
  readonly code: InputErrorCode;
  /** JSON Pointer to the value */
  readonly path: string;
  /** what was expected there, as data */
  readonly expected: InputExpected;
  /** what was found */
  readonly actual?: unknown;
  /** the sentence in English */
  readonly message: string;
  /** the same without the place, where `message` has it */
  readonly sentence?: string | undefined;
}

/** A catalogue: all that is said of wrong inputs, in one language. */
export interface ProblemTexts {
  /** what each rule wants; what is left out is said in English */
  readonly rules: { readonly [Rule in keyof InputRuleTexts]?: InputRuleTexts[Rule] | undefined };
  /** what is wanted by kind, range, format or list */
  readonly wanted: (expected: ExpectedFigures) => string;
  /** what is wanted, and what was given where that is told; `rule` where a rule wants it */
  readonly must: (wanted: string, given: string | undefined, rule?: InputRule) => string;
  /** what is wanted, where nothing was given */
  readonly missing: (wanted: string) => string;
  /** how many items are wanted, and how many there are; `path` is the list's */
  readonly items: (expected: ExpectedFigures, count: number, path?: string) => string;
  /** a field that has to be given too */
  readonly counterpart: (place: string) => string;
  /** a value, short */
  readonly value: (value: unknown) => string;
  /** a line of several: the place, and what is wrong there */
  readonly line: (place: string, sentence: string) => string;
}

/** The English catalogue. What a rule wants is said by the problem itself. */
export const problemTexts: ProblemTexts = {
  rules: {},
  wanted: (expected) => {
    const { readings, path, types, values, forms, format } = expected;
    if (readings !== undefined) return valuesText(readings);
    if (path !== undefined) return sideText(expected);
    return (types ?? values ?? forms ?? format) === undefined ? rangeText(expected) : wantedText(expected);
  },
  must: (wanted, given) => (given === undefined ? `must be ${wanted}` : mustText(wanted, given)),
  missing: (wanted) => `is missing: ${wanted}`,
  items: itemsText,
  counterpart: (place) => `needs ${place}: what was it for the known time?`,
  value: show,
  line: (place, sentence) => (place === "" ? sentence : `${place} ${sentence}`),
};
