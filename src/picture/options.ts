/*
 * How a picture is drawn, and where its parts come to lie.
 */
import { arrayOf, inRange, isBoolean, isText, notOneOf, plainObject, refuse } from "../core/guards.js";
import { wordOptions, type PictureWordOptions } from "./describePicture.js";
import type { AnswerPicture } from "./types.js";
import type { Language } from "./words.js";
import { nameText } from "./text.js";

/** A part of the drawing. */
export type PicturePart = "picture" | "ladder" | "strip";

/** The parts, from top to bottom. */
const PARTS: readonly PicturePart[] = ["picture", "ladder", "strip"];

/** How a picture is drawn. */
export interface PictureSvgOptions extends PictureWordOptions {
  /** which parts; all that the picture has when left out */
  readonly parts?: readonly PicturePart[] | undefined;
  /** the width in px, 280 to 4000; 720 when left out */
  readonly width?: number | undefined;
  /** the height of the curves in px, 120 to 4000; it goes with the width when left out */
  readonly plotHeight?: number | undefined;
  /** the beginning of every id, a letter and then letters, digits and hyphens; `"picture"` when left out */
  readonly prefix?: string | undefined;
  /** a file of its own: paper, margin, and its own colours for light, dark and print */
  readonly standalone?: boolean | undefined;
  /** a line above the picture */
  readonly heading?: string | undefined;
  /** lines below it, such as where the data come from */
  readonly foot?: readonly string[] | undefined;
}

/** The upper and lower edge of a part, in the units of the viewBox. */
export interface PictureEdges {
  /** the y of its upper edge */
  readonly top: number;
  /** the y of its lower edge */
  readonly bottom: number;
}

/** A rung of the ladder as it is drawn. */
export interface PictureRungEdges extends PictureEdges {
  /** the y of its arrow */
  readonly arrowY: number;
}

/** The box of a piece of the strip. */
export interface PictureStripBox extends PictureEdges {
  /** the time in it, s */
  readonly timeS: number;
  /** the x of its left edge */
  readonly left: number;
  /** the x of its right edge */
  readonly right: number;
}

/**
 * Where the parts of a picture are, in the units of its viewBox. A time t is at left + (right − left) ×
 * ln(t/lowS)/ln(highS/lowS); a temperature c at bottom − (bottom − top) × (c − fromC)/(toC − fromC).
 */
export interface PictureLayout {
  /** the width of the viewBox */
  readonly width: number;
  /** its height */
  readonly height: number;
  /** the left edge of the scale of time, one for all parts */
  readonly left: number;
  /** its right edge */
  readonly right: number;
  /** the edges of the temperatures */
  readonly plot?: PictureEdges;
  /** the ladder, with a place for each rung */
  readonly ladder?: PictureEdges & {
    /** one for each rung, in their order */
    readonly rungs: readonly PictureRungEdges[];
  };
  /** the strip, with a box for each time */
  readonly strip?: PictureEdges & {
    /** one for each time, in their order */
    readonly boxes: readonly PictureStripBox[];
  };
}

/** The options, checked, with what is left out. */
export type DrawingOptions = PictureSvgOptions & {
  readonly parts: readonly PicturePart[];
  readonly width: number;
  readonly prefix: string;
  readonly standalone: boolean;
  readonly language: Language;
};

/** Checks how a picture is to be drawn. */
export function drawingOptions(
  at: string,
  given: PictureSvgOptions,
  { strip }: AnswerPicture,
): DrawingOptions {
  const options = plainObject(at, given) as PictureSvgOptions;
  const language = wordOptions(at, options);
  const { parts, width = 720, plotHeight, prefix = "picture", standalone = false, heading, foot } = options;
  const own = strip === undefined ? PARTS.filter((part) => part !== "strip") : PARTS;
  if (parts !== undefined)
    arrayOf(`${at}/parts`, parts, 1).forEach((part, i) => {
      if (!PARTS.includes(part as PicturePart)) notOneOf(`${at}/parts/${i}`, PARTS, part);
    });
  inRange(`${at}/width`, width, 280, 4000);
  if (plotHeight !== undefined) inRange(`${at}/plotHeight`, plotHeight, 120, 4000);
  isText(`${at}/prefix`, prefix);
  if (!/^[A-Za-z][\w-]*$/.test(prefix)) refuse(`${at}/prefix`, "name", nameText, {}, prefix);
  isBoolean(`${at}/standalone`, standalone);
  if (heading !== undefined) isText(`${at}/heading`, heading);
  if (foot !== undefined)
    arrayOf(`${at}/foot`, foot, 0).forEach((line, i) => {
      isText(`${at}/foot/${i}`, line);
    });
  return { ...options, parts: parts ?? own, width, prefix, standalone, language };
}
