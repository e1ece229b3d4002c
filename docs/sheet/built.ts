/* When the page is built: the invented sheet as HTML, over a document without a browser. */
import { showSheet } from "./page.js";
import { inventedSheet, storeOf } from "./sheet.js";

/** The sheet as HTML. */
export function builtSheet(over: Document): string {
  globalThis.document = over;
  const root = over.createElement("main");
  showSheet(root, storeOf(inventedSheet));
  return root.innerHTML;
}
