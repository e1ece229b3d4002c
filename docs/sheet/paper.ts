/* Whether the sheet is drawn for paper. */

let printing = false;

/** Says that it is about to be printed, or was: the style of paper comes only later. */
export function setPrinting(on: boolean): void {
  printing = on;
}

/** Whether the sheet is drawn for paper. */
export const onPaper = (): boolean =>
  printing || (typeof matchMedia === "function" && matchMedia("print").matches);
