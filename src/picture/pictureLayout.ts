import { checkedPicture } from "./checkedPicture.js";
import { frameOf } from "./frame.js";
import { drawingOptions, type PictureLayout, type PictureSvgOptions } from "./options.js";
import type { AnswerPicture } from "./types.js";
import { wordsOf } from "./words.js";

/**
 * Where the parts of a drawing are, for a page that puts a dot to drag or boxes to tick over it.
 *
 * @param picture - what `answerPicture` or `recipePicture` returns
 * @param options - the same as for {@link pictureSvg}
 * @returns width and height of the viewBox, the edges of the scale of time, and the places of the parts that
 * are drawn
 * @throws TypeError when an argument or a part of it is of the wrong kind
 * @throws RangeError when a figure is out of range
 *
 * @remarks A time t is at left + (right − left) × ln(t/lowS)/ln(highS/lowS), with the edges of
 * `picture.axes`. A temperature c is at bottom − (bottom − top) × (c − fromC)/(toC − fromC) of `plot`.
 *
 * @example
 * ```ts
 * const picture = answerPicture({ baseline: { timeS: 510, temperatureC: 20 } });
 * const layout = pictureLayout(picture, { parts: ["picture"], width: 400, plotHeight: 240 });
 * [layout.left, layout.right] // => [42, 390]
 * layout.plot // => { top: 24, bottom: 264 }
 * ```
 */
export function pictureLayout(picture: AnswerPicture, options: PictureSvgOptions = {}): PictureLayout {
  checkedPicture("pictureLayout/picture", picture);
  const asked = drawingOptions("pictureLayout/options", options, picture);
  const frame = frameOf(picture, wordsOf(picture, asked.language), asked);
  const { width, height, left, right, plot, ladder, strip } = frame;
  return {
    width,
    height,
    left,
    right,
    ...(plot === undefined ? {} : { plot }),
    ...(ladder === undefined ? {} : { ladder }),
    ...(strip === undefined ? {} : { strip }),
  };
}
