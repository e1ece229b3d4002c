import { isText, plainObject } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { temperatureUnit } from "../quantities/parseTemperature.js";
import { answerTexts, type AnswerTexts } from "../text/answerTexts.js";
import { checkedTexts } from "../text/checkedTexts.js";
import { checkedPicture } from "./checkedPicture.js";
import { pictureTexts, type PictureTexts } from "./text.js";
import type { AnswerPicture } from "./types.js";
import { wordsOf, type Language, type PictureWords } from "./words.js";

/** In which language and unit a picture speaks. */
export interface PictureWordOptions {
  /** the catalogue of the picture in another language; English when left out */
  readonly texts?: PictureTexts | undefined;
  /** the catalogue of causes, bases and changes; English when left out */
  readonly answerTexts?: AnswerTexts | undefined;
  /** `"C"` or `"F"`; °C when left out */
  readonly unit?: "C" | "F" | undefined;
  /**
   * today's side of a cause as a person wrote it, by the cause: `{ use: "3 × 9x12 cm" }`; as the catalogue
   * of an answer writes it when left out
   */
  readonly written?: Readonly<Record<string, string | undefined>> | undefined;
}

/**
 * The words of a picture, as {@link pictureSvg} writes them, for a page that shows them beside the drawing.
 *
 * @param picture - what `answerPicture` or `recipePicture` returns
 * @param options - the catalogues of another language, and the unit of temperatures
 * @returns a title, the description for those who hear the picture, the words at the dots and curves, and for
 * each rung its cause, what it rests on, and the change
 * @throws TypeError when an argument or a part of it is of the wrong kind
 * @throws RangeError when a figure is out of range
 *
 * @remarks Times are rounded as `roundEstimate` does. The known time is shown as it was given.
 *
 * @example
 * ```ts
 * const law: TemperatureLaw = { kind: "coefficient", ratio: 2, intervalC: 10 };
 * const baseline = { timeS: 510, temperatureC: 20 };
 * const knowledge = { temperature: law };
 * const words = describePicture(answerPicture({ baseline, conditions: { temperatureC: 18 }, knowledge }));
 * words.known // => "known 8:30"
 * words.rungs[1] // => { cause: "2° colder", basis: "given", change: "15 % more" }
 * ```
 */
export function describePicture(picture: AnswerPicture, options: PictureWordOptions = {}): PictureWords {
  checkedPicture("describePicture/picture", picture);
  return wordsOf(picture, wordOptions("describePicture/options", options));
}

/** The options with what is left out. */
export function wordOptions(at: string, options: PictureWordOptions): Language {
  const given = plainObject(at, options) as PictureWordOptions;
  const { texts = pictureTexts, answerTexts: answers = answerTexts, written = {} } = given;
  checkedTexts(`${at}/texts`, texts, pictureTexts);
  checkedTexts(`${at}/answerTexts`, answers, answerTexts);
  const named = onlyFields(`${at}/written`, written, Object.keys(answerTexts.causes));
  for (const [cause, text] of Object.entries(named))
    if (text !== undefined) isText(`${at}/written/${cause}`, text);
  const unit = temperatureUnit(at, { unit: given.unit }) ?? "C";
  return { texts, answerTexts: answers, unit, written };
}
