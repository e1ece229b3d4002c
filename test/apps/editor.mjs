/*
 * What an editor does with a recipe that names its schema: the JSON engine of a common editor completes fields, offers values, shows
 * sentences and marks what is wrong, by the schema file of the installed package alone.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

/** The checks, against the tools below `tools` and the package installed below `folder`; returns what they found. */
export async function editor(tools, folder) {
  const require = createRequire(join(tools, "package.json"));
  const { getLanguageService } = require("vscode-json-languageservice");
  const { TextDocument } = require("vscode-languageserver-textdocument");
  const service = getLanguageService({
    schemaRequestService: async (uri) => readFileSync(fileURLToPath(uri), "utf8"),
    workspaceContext: { resolveRelativePath: (path, resource) => new URL(path, resource).href },
  });
  const uri = pathToFileURL(join(folder, "recipe.json")).href;
  /** A document with its cursor at ¦. */
  const open = (text) => {
    const at = text.indexOf("¦");
    const document = TextDocument.create(uri, "json", 1, text.replace("¦", ""));
    return { document, position: document.positionAt(at), json: service.parseJSONDocument(document) };
  };
  const schema = '"$schema": "./node_modules/darkroom-kinetics/dist/recipe.schema.json"';
  const completed = async (text) => {
    const { document, position, json } = open(text);
    return (await service.doComplete(document, position, json)).items.map(({ label }) => label);
  };
  const judged = async (text) => {
    const { document, json } = open(text);
    return (await service.doValidation(document, json)).map(({ message, range }) => ({
      message,
      line: range.start.line,
    }));
  };
  const recipe = `"schemaVersion": 2, "material": { "name": "plate" }, "developer": { "kind": "stock", "name": "one", "dilution": "1+9" }`;
  const hover = open(`{ ${schema}, ${recipe}, "baseline": { "time¦S": 510, "temperatureC": 20 } }`);
  return {
    fields: await completed(`{ ${schema}, "schemaVersion": 2, ¦ }`),
    inside: await completed(`{ ${schema}, "baseline": { ¦ } }`),
    values: await completed(`{ ${schema}, "material": { "name": "plate", "kind": ¦ } }`),
    sound: await judged(`{ ${schema}, ${recipe}, "baseline": { "timeS": 510, "temperatureC": 20 } }`),
    wrong: await judged(
      `{ ${schema}, ${recipe},\n"baseline": { "timeS": -5,\n"temperatureC": 20,\n"temperatur": 14 } }`,
    ),
    missing: await judged(`{ ${schema}, "schemaVersion": 2 }`),
    hover: (await service.doHover(hover.document, hover.position, hover.json))?.contents ?? [],
  };
}
