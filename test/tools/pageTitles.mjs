/* A plugin of TypeDoc: a page of docs is called by its first heading, not by the path of its file. */
import { Converter } from "typedoc";

export function load(app) {
  app.converter.on(Converter.EVENT_CREATE_DOCUMENT, (_context, page) => {
    const [first] = page.content;
    const heading = /^# (.+)$/m.exec(first?.text ?? "")?.[1];
    if (heading !== undefined) page.name = heading.replaceAll("`", "");
  });
}
