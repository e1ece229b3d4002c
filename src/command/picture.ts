/*
 * darkroom-kinetics chart --svg: one answer of a recipe or a day as a picture.
 */
import {
  answerPicture,
  describeCautions,
  describePicture,
  pictureSvg,
  recipePicture,
  type AnswerPicture,
  type Caution,
} from "../index.js";
import type { Judged } from "./ofDeveloper.js";
import { bathBeside, bathOf, bathUnder, refuseBath } from "./askedBath.js";
import { recipeOf, type Document } from "./document.js";
import { placed } from "./fault.js";
import { knownDay } from "./knownDay.js";
import { safetyIn } from "./lines.js";
import type { Asked } from "./options.js";
import { askedConditions, dayPlaces, recipeName } from "./time.js";
import { wordsOf, type Words } from "./words.js";

/** The picture of a file: what is drawn, and the drawing. */
export interface PictureReport {
  readonly data: { readonly file: string; readonly name: string; readonly picture: AnswerPicture };
  readonly text: string;
  readonly cautions: readonly Caution[];
}

export function pictureReport(document: Document, asked: Asked): PictureReport {
  const { name, picture, unread } =
    document.kind === "recipe" ? ofRecipe(document, asked) : ofDay(document, asked);
  const cautions = [...unread, ...picture.cautions];
  return {
    data: { file: document.file, name, picture },
    text: drawn(name, picture, cautions, wordsOf(asked)),
    cautions,
  };
}

/** A picture under its name, and what of the file was not read. */
interface Named {
  readonly name: string;
  readonly picture: AnswerPicture;
  readonly unread: readonly Caution[];
}

function ofRecipe(document: Document, asked: Asked): Named {
  refuseBath(asked);
  const recipe = recipeOf(document);
  const picture = placed([], () => recipePicture(recipe, askedConditions(asked), { strip: true }));
  return { name: recipeName(recipe, wordsOf(asked)), picture, unread: [] };
}

function ofDay(document: Document, asked: Asked): Named {
  const words = wordsOf(asked);
  const { known: baseline, knowledge, baths, answer, cautions: unread } = knownDay(document, words);
  const own = askedConditions(asked);
  const { name, conditions, pointer } =
    own === undefined
      ? (bathOf(baths, asked.bath) ?? bathBeside(words.asKnown, {}))
      : bathUnder(own, baths, asked.bath, words);
  const input = { baseline, conditions, knowledge, strip: true };
  const picture = placed(dayPlaces(pointer), () => underJudgement(answerPicture(input), answer(conditions)));
  return { name, picture, unread };
}

/** A picture with what is said of its bath, which may leave it no time at any temperature. */
function underJudgement(picture: AnswerPicture, { refused, cautions }: Judged): AnswerPicture {
  if (!refused || picture.refused) return { ...picture, cautions };
  const { today: _today, strip: _strip, ...rest } = picture;
  const { fromC, toC } = picture.axes;
  const refusals = cautions.slice(0, 1).map(({ code, message }) => ({ fromC, toC, code, message }));
  return { ...rest, refused, rungs: [], refusals, cautions };
}

/** A file of its own: the answer above, what is unwise below. */
function drawn(name: string, picture: AnswerPicture, cautions: readonly Caution[], words: Words): string {
  const { texts, unit } = words;
  const language = texts === undefined ? { unit } : { texts: texts.picture, answerTexts: texts.answer, unit };
  const { time, interval } = describePicture(picture, language);
  const answer = time === undefined ? words.noTime : words.pictured(time, interval ?? "");
  const grave = cautions.filter(({ severity }) => severity !== "note");
  const said = grave.map((one) => ({ ...one, path: "" }));
  return pictureSvg(picture, {
    ...language,
    standalone: true,
    heading: `${name}: ${answer}`,
    foot: [...describeCautions(said, texts?.cautions, { unit }), safetyIn(words)],
  });
}
