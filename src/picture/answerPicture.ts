import { causes } from "../causes.js";
import { prepared } from "../compensate/loop.js";
import { plainObject } from "../core/guards.js";
import { pictureOf } from "./pictureOf.js";
import type { AnswerPicture, AnswerPictureInput } from "./types.js";

/**
 * An answer of `compensate` as a picture: plain data for {@link pictureSvg}, {@link describePicture} or a
 * drawing of your own.
 *
 * @param input - the known time, today's conditions, the laws, and perhaps what the picture covers
 * @returns both dots, the curves of the known recipe and of today's bath over temperature, the stretches
 * without a time, where warnings begin, the points of a table or of own runs, the rungs of the ladder, the
 * strip where one was asked for, and the axes; times in s and unrounded, temperatures in °C
 * @throws TypeError when a field is of the wrong kind, or a condition is given that the baseline lacks
 * @throws RangeError when a value is out of range, or an edge lies beyond the other
 *
 * @remarks Each number is one that `compensate` gives. The arrow of a rung is ln(factor) long on the
 * logarithmic scale of time, so the arrows add up to the answer. Its whisker is the 90 % interval of that
 * cause alone. Where today is refused there is no dot, no ladder and no strip; hand in the edges of the
 * picture before, and the axes stay. A bath that drifts is shown at the temperature of a steady bath that
 * takes as long.
 *
 * @example
 * ```ts
 * const law: TemperatureLaw = { kind: "coefficient", ratio: 2, intervalC: 10 };
 * const baseline = { timeS: 510, temperatureC: 20 };
 * const knowledge = { temperature: law };
 * const picture = answerPicture({ baseline, conditions: { temperatureC: 18 }, knowledge });
 * picture.today?.timeS // => 585.8
 * picture.rungs.map(({ cause }) => cause) // => ["baseline", "temperature", "together"]
 * picture.rungs[1]?.percent // => 14.87
 * ```
 */
export function answerPicture(input: AnswerPictureInput): AnswerPicture {
  const at = "answerPicture/input";
  const {
    baseline,
    conditions = {},
    knowledge = {},
    ...range
  } = plainObject(at, input) as unknown as AnswerPictureInput;
  plainObject(`${at}/conditions`, conditions);
  const ask = prepared("answerPicture", causes, baseline, knowledge);
  const source = {
    baseline,
    knowledge,
    temperatureC: conditions.temperatureC,
    answer: ask.answer(conditions),
    known: (temperatureC: number) => ask.answer({ temperatureC }),
    bath: (temperatureC: number) => ask.answer({ ...conditions, temperatureC }),
    any: ask.answer,
  };
  return pictureOf(at, source, range);
}
