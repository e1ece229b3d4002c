import { checkedPicture } from "./checkedPicture.js";
import { ladderDrawn, plumbsDrawn, stripDrawn } from "./drawLadder.js";
import { axesDrawn, heightOn, plotDrawn } from "./drawPlot.js";
import { frameOf, HEADING, LABEL } from "./frame.js";
import { drawingOptions, type PictureSvgOptions } from "./options.js";
import { box, fill, line, styleOf, words } from "./paint.js";
import { escaped, short } from "./svgParts.js";
import type { AnswerPicture } from "./types.js";
import { wordsOf } from "./words.js";

/**
 * A picture as SVG text: the curves of time over temperature, and below them, on the same scale of time, the
 * ladder of causes and the strip.
 *
 * @param picture - what `answerPicture` or `recipePicture` returns
 * @param options - which parts, how wide, in which language and unit, and whether it is a file of its own
 * @returns one `svg` element with a title and a description for those who hear it
 * @throws TypeError when an argument or a part of it is of the wrong kind
 * @throws RangeError when a figure is out of range, or an option none of its values
 *
 * @remarks Dotted is the known recipe, solid with its 90 % band today's bath. Hatched is where there is no
 * time, and a dashed line is where a warning begins. The arrow of a cause is ln(factor) long; it is solid
 * where it rests on a printed or own figure, and hollow where on a general rule. Rows of a table are squares,
 * own runs rings. Nothing depends on colour alone.
 *
 * Colours are the CSS custom properties `--picture-ink`, `--picture-quiet`, `--picture-today`,
 * `--picture-grid` and `--picture-paper`; where a page sets none, `currentColor` and `Canvas` serve. With
 * `standalone` the picture brings its own, for light and dark screens and for print. A word that finds no
 * free place in the plot is left out of it; the description says all of them.
 *
 * @example
 * ```ts
 * const baseline = { timeS: 510, temperatureC: 20 };
 * const picture = answerPicture({ baseline, conditions: { temperatureC: 18 } });
 * pictureSvg(picture, { width: 400 }).startsWith("<svg") // => true
 * pictureSvg(picture).includes("today 18 °C") // => true
 * ```
 */
export function pictureSvg(picture: AnswerPicture, options: PictureSvgOptions = {}): string {
  checkedPicture("pictureSvg/picture", picture);
  const asked = drawingOptions("pictureSvg/options", options, picture);
  const { prefix, standalone, heading, language } = asked;
  const said = wordsOf(picture, language);
  const frame = frameOf(picture, said, asked);
  const { width, height, margin, plot, left, right } = frame;
  const { top, bottom } = plot ?? { top: 0, bottom: 0 };
  const size = `width="${short(width)}" height="${height}" viewBox="0 0 ${short(width)} ${height}"`;
  const spoken = `role="img" aria-labelledby="${prefix}-title ${prefix}-description"`;
  const face = standalone ? ' font-family="system-ui, sans-serif"' : "";
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} class="${prefix}" ${spoken}${face}>`,
    `<title id="${prefix}-title">${escaped(heading ?? said.title)}</title>`,
    `<desc id="${prefix}-description">${escaped(said.description.join(" "))}</desc>`,
    `<style>\n${styleOf(prefix, standalone)}\n</style>`,
    "<defs>",
    `<pattern id="${prefix}-hatch" width="8" height="8" patternUnits="userSpaceOnUse">`,
    `<path d="M-2 2L2 -2M0 8L8 0M6 10L10 6" ${line("quiet", 0.8)} stroke-opacity="0.5"/></pattern>`,
    `<clipPath id="${prefix}-plot">${box(left, top, right - left, bottom - top, "")}</clipPath>`,
    "</defs>",
    ...(standalone ? [box(0, 0, width, height, fill("paper"))] : []),
    ...frame.heading.map(({ text, y }) => words(margin, y, text, { size: HEADING, ink: "ink", bold: true })),
    ...axesDrawn(picture, said, frame, asked),
    ...plumbsDrawn(picture, heightOn(picture, top, bottom), frame),
    ...plotDrawn(picture, said, frame, asked),
    ...ladderDrawn(picture, said, frame, language.texts.nothing),
    ...stripDrawn(picture, said, frame),
    ...frame.foot.map(({ text, y }) => words(margin, y, text, { size: LABEL, ink: "quiet" })),
    "</svg>",
    "",
  ].join("\n");
}
