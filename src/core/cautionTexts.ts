/*
 * The sentence of a caution is a function of its code and its data. English and every other language have one
 * shape.
 */
import type { Caution, CautionSeverity } from "./caution.js";
import type { CautionCode } from "./cautionCodes.js";
import type { CautionData } from "./cautionData.js";
import type { MeasuredQuantity } from "./quantity.js";

/** The unit that people see temperatures in. */
export type TemperatureUnit = "C" | "F";

/** What a caution's sentence is made from. */
export interface CautionFacts<Code extends CautionCode = CautionCode> {
  /** how grave it is */
  readonly severity: CautionSeverity;
  /** the limit that was passed, in the unit of its quantity */
  readonly limit: number;
  /** the figure that passed it */
  readonly actual: number;
  /** what else the sentence names */
  readonly data: Code extends keyof CautionData ? CautionData[Code] : object;
}

/** The sentence of each caution, with temperatures in the unit that people see. */
export type CautionSentences = {
  readonly [Code in CautionCode]: (facts: CautionFacts<Code>, unit: TemperatureUnit) => string;
};

/** All that cautions say, in one language. */
export interface CautionTexts {
  /** how grave: the word before the sentence */
  readonly severities: Readonly<Record<CautionSeverity, string>>;
  /** the sentences by their codes; one that is left out is said in English, as `message` has it */
  readonly sentences: { readonly [Code in CautionCode]?: CautionSentences[Code] | undefined };
}

/** A sentence of any code. */
export type AnySentence = (facts: object, unit: TemperatureUnit) => string;

/** What a caution carries beside its code, severity and sentence. */
export type CautionFigures<Code extends CautionCode> = AnyFigures &
  (Code extends keyof CautionData ? { readonly data: CautionData[Code] } : object);

/** The same as the last argument: left out where the code has no data. */
export type FiguresOf<Code extends CautionCode> = Code extends keyof CautionData
  ? [figures: CautionFigures<Code>]
  : [figures?: CautionFigures<Code>];

interface AnyFigures {
  readonly path?: string;
  readonly quantity?: MeasuredQuantity;
  readonly limit?: number;
  readonly actual?: number;
}

/** Makes the cautions of one module: the code first, then how grave it is and what the sentence names. */
export type Sayer<Codes extends CautionCode> = <Code extends Codes>(
  code: Code,
  severity: CautionSeverity,
  ...figures: FiguresOf<Code>
) => Caution;

/** The function that makes the cautions of one module, from its sentences. */
export function sayer<Codes extends CautionCode>(sentences: Pick<CautionSentences, Codes>): Sayer<Codes> {
  return (code, severity, ...figures) => makeCaution(sentences, code, severity, ...figures);
}

/** Makes a caution; its English sentence comes from its module's. No figure may be undefined. */
export function makeCaution<Code extends CautionCode>(
  sentences: Pick<CautionSentences, Code>,
  code: Code,
  severity: CautionSeverity,
  ...[figures]: FiguresOf<Code>
): Caution {
  const caution = { code, severity, message: "", ...figures };
  caution.message = (sentences[code] as AnySentence)(caution, "C");
  // The compiler does not see that the figures of one code are those of one member of the union.
  return caution as Caution;
}
