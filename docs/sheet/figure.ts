/* A drawing of the package in the page: as wide as its place, and as large as the reader's own text. */
import { pictureLayout, pictureSvg, type PictureLayout, type PictureSvgOptions } from "darkroom-kinetics";
import { pictureWords } from "./catalogue.js";
import { attribute, el } from "./dom.js";
import { onPaper } from "./paper.js";
import type { Store } from "./sheet.js";

type Part = "picture" | "ladder" | "strip";

/** A drawing, and how it follows a change. */
export interface Figure {
  readonly element: HTMLElement;
  /** the element over which the drawing lies; others may be put beside it */
  readonly layout: () => PictureLayout;
  readonly update: () => void;
}

/** Before the page has a width, as when it is built, these two are made, and the style shows one. */
const BUILT = { narrow: 350, wide: 760 } as const;

/**
 * The width on paper, px: more than there is between the margins, and more for more rungs, so that all parts
 * are drawn smaller and fit on one page.
 */
const printedWidth = (rungs: number): number => 480 + 53 * Math.max(6, rungs);

/** Makes the drawing of one part; `refit` is called after it was drawn for another width. */
export function figureOf(
  store: Store,
  part: Part,
  plotHeight: number | undefined,
  refit: () => void,
): Figure {
  const element = el("div", { "class": `figure ${part}`, "aria-hidden": "true" });
  let width: number = BUILT.narrow;
  let screen: number | undefined;
  let drawn = "";
  const options = (prefix: string, wide: number): PictureSvgOptions => ({
    ...pictureWords(store),
    parts: [part],
    width: wide,
    prefix,
    ...(plotHeight === undefined ? {} : { plotHeight: wide < 500 ? plotHeight : plotHeight * 1.3 }),
  });
  const picture = (): Parameters<typeof pictureSvg>[0] =>
    part === "strip" && store.answer.strip !== undefined
      ? { ...store.answer.picture, strip: store.answer.strip }
      : store.answer.picture;
  const update = (): void => {
    // Asking for a width makes the browser lay out the page: on a screen that is done when the width changes.
    const there = onPaper()
      ? printedWidth(store.answer.picture.rungs.length)
      : (screen ??= measured(element));
    width = there ?? BUILT.narrow;
    const made =
      there === undefined
        ? Object.entries(BUILT)
            .map(
              ([name, wide]) =>
                `<div class="${name}">${pictureSvg(picture(), options(`${part}-${name}`, wide))}</div>`,
            )
            .join("")
        : pictureSvg(picture(), options(part, width));
    if (made === drawn) return;
    drawn = made;
    element.innerHTML = made;
    attribute(element, "data-width", width);
  };
  if (typeof ResizeObserver === "function")
    new ResizeObserver(() => {
      const there = measured(element);
      if (onPaper() || there === undefined || Math.abs(there - width) < 1) return;
      screen = there;
      update();
      refit();
    }).observe(element);
  return { element, layout: () => pictureLayout(picture(), options(part, width)), update };
}

/** The width to draw for: less for larger text, so that letters grow with it; nothing before there is one. */
function measured(element: HTMLElement): number | undefined {
  if (typeof getComputedStyle !== "function" || element.clientWidth === 0) return undefined;
  const text = parseFloat(getComputedStyle(document.documentElement).fontSize) / 16;
  return Math.round(Math.min(1200, Math.max(280, element.clientWidth / text)));
}
