/* What every section of the sheet is: one element, and how it follows a change. */
import { el, type Child } from "./dom.js";
import type { Store } from "./sheet.js";

/** A section of the sheet. A change of language makes it anew; any other change calls `update`. */
export interface Section {
  readonly element: HTMLElement;
  readonly update: () => void;
}

export type MakeSection = (store: Store) => Section;

/** The frame that all sections share: a heading in the margin, and the body beside or below it. */
export function frame(id: string, heading: string, ...body: readonly Child[]): HTMLElement {
  return el(
    "section",
    { "id": id, "class": "part", "aria-labelledby": `${id}-heading` },
    el("h2", { id: `${id}-heading` }, heading),
    el("div", { class: "body" }, ...body),
  );
}
