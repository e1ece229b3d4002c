/*
 * npm run page: writes docs/page/index.html, one file with its script inside. With --check it writes nothing
 * and fails when the file is not what its sources give.
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build, transform } from "esbuild";
import { parseHTML } from "linkedom";
import { minify } from "terser";
import { packed, unpacked } from "./packed.mjs";

const at = (path) => fileURLToPath(new URL(path, import.meta.url));

/** One bundle: the page's sources and the package from src, as tsconfig.json maps it. */
async function bundle(entry, options) {
  const { outputFiles } = await build({
    entryPoints: [at(entry)],
    bundle: true,
    write: false,
    target: "es2022",
    tsconfig: at("tsconfig.json"),
    // For the page's bytes to be the same wherever it is built.
    absWorkingDir: at("../.."),
    legalComments: "none",
    logLevel: "warning",
    ...options,
  });
  return outputFiles[0].text;
}

/** The sheet as HTML: the page's own code, run over a document without a browser. */
async function sheetHtml() {
  const code = await bundle("built.ts", { format: "esm" });
  const { builtSheet } = await import(`data:text/javascript;base64,${Buffer.from(code).toString("base64")}`);
  return builtSheet(parseHTML("<!doctype html><html><head></head><body></body></html>").document);
}

async function styleText() {
  const names = readdirSync(at("."))
    .filter((name) => name.endsWith(".css"))
    .sort((a, b) => (a === "style.css" ? -1 : b === "style.css" ? 1 : a < b ? -1 : 1));
  const text = names.map((name) => readFileSync(at(name), "utf8")).join("\n");
  return (await transform(text, { loader: "css", minify: true })).code.trim();
}

/** The page's script, made small: after brotli it is 4 % smaller than by the bundler alone. */
async function scriptText() {
  const code = await bundle("main.ts", { format: "iife" });
  return (await minify(code, { ecma: 2022, toplevel: true, compress: { passes: 3 } })).code.trim();
}

async function pageText() {
  const parts = {
    style: await styleText(),
    sheet: await sheetHtml(),
    code: packed(await scriptText()),
  };
  return readFileSync(at("template.html"), "utf8").replace(/\{\{(\w+)\}\}/g, (_, name) => parts[name]);
}

const page = at("../page/index.html");
const text = await pageText();
if (process.argv.includes("--check")) {
  // Packers differ from machine to machine in their bytes, not in what they pack.
  if (unpacked(readFileSync(page, "utf8")) !== unpacked(text)) {
    console.error("docs/page/index.html is not what its sources give: npm run page writes it");
    process.exitCode = 1;
  }
} else writeFileSync(page, text);
