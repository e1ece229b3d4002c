/*
 * npm run runtimes: packs the package once, installs the tarball into scratch projects and imports it the way
 * its users do: three versions of Node, ES modules and CommonJS, under Jest, TypeScript under both module
 * resolutions, Deno, builds of four bundlers, and pages in headless Chromium. Every case works out the same
 * invented bath, equal to the last bit, and thousands of numbers over a sweep, equal to 1e-12. A case whose
 * runtime cannot be had is NOT CHECKED, and the last line says so.
 */
import { spawnSync } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { showInChromium } from "./chromium.mjs";
import { installTools, NotChecked, npm, run } from "../tools/installed.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const root = fileURLToPath(new URL("../..", import.meta.url));
const cache = join(root, "node_modules/.cache/runtimes");
const scratch = mkdtempSync(join(tmpdir(), "runtimes-"));
const { about, ...bath } = JSON.parse(readFileSync(join(here, "consumers/bath.json"), "utf8"));

/** A program of the cache, or the one line that says what is missing. */
function tool(name, ...path) {
  const file = join(cache, "node_modules", ...path);
  if (!existsSync(file))
    throw new NotChecked(`${name} could not be installed on ${process.platform}-${process.arch}`);
  return file;
}

function denoProgram() {
  const builds = join(cache, "node_modules/@deno");
  const [build] = existsSync(builds) ? readdirSync(builds) : [];
  return tool("Deno", "@deno", build ?? "none", process.platform === "win32" ? "deno.exe" : "deno");
}

function packAndInstall() {
  const [{ filename }] = JSON.parse(
    run("npm", ["pack", "--json", "--ignore-scripts", "--pack-destination", scratch], root),
  );
  writeFileSync(join(scratch, "package.json"), JSON.stringify({ name: "scratch", private: true }));
  npm(["install", `./${filename}`], scratch);
  return filename;
}

/** A project of its own below the installed package. */
function project(name, type, files) {
  const folder = join(scratch, name);
  mkdirSync(folder);
  writeFileSync(join(folder, "package.json"), JSON.stringify({ name, private: true, type }));
  for (const [to, from] of Object.entries({ "bath.json": "bath.json", ...files }))
    cpSync(join(here, "consumers", from), join(folder, to));
  return folder;
}

const strict = {
  strict: true,
  exactOptionalPropertyTypes: true,
  noUncheckedIndexedAccess: true,
  skipLibCheck: false,
  verbatimModuleSyntax: false,
  target: "ES2022",
  lib: ["ES2022"],
  types: [],
};

function typeCheck(folder, compilerOptions, include) {
  writeFileSync(
    join(folder, "tsconfig.json"),
    JSON.stringify({ compilerOptions: { ...strict, ...compilerOptions }, include }),
  );
  run(process.execPath, [join(root, "node_modules/typescript/bin/tsc"), "-p", folder], folder);
}

/** TypeScript under nodenext: compiled by the strict compiler, then run. */
function nodenext(extension) {
  const folder = project(`nodenext-${extension}`, "module", { [`typed.${extension}ts`]: "typed.ts" });
  const main =
    `import { work, type Bath } from "./typed.${extension}js";\ndeclare const console: { log(text: string): void };\n` +
    `const bath: Bath = ${JSON.stringify(bath)};\nconsole.log(JSON.stringify(work(bath)));\n`;
  writeFileSync(join(folder, `main.${extension}ts`), main);
  typeCheck(folder, { module: "nodenext", moduleResolution: "nodenext" }, [`*.${extension}ts`]);
  return run(process.execPath, [`main.${extension}js`], folder);
}

const bundled = join(scratch, "bundler");

function bundlerTypes() {
  project("bundler", "module", {
    "typed.ts": "typed.ts",
    "page.ts": "page.ts",
    "sweep.mjs": "sweep.mjs",
    "sweep.d.mts": "sweep.d.mts",
    "index.html": "page.html",
  });
  typeCheck(
    bundled,
    {
      module: "esnext",
      moduleResolution: "bundler",
      resolveJsonModule: true,
      verbatimModuleSyntax: true,
      noEmit: true,
    },
    ["*.ts"],
  );
}

/** A page as a browser shows it. */
async function shown(folder, name) {
  const playwright = tool("playwright-core", "playwright-core", "index.js");
  const shot = join(root, `reports/runtimes-${name}.png`);
  mkdirSync(join(root, "reports"), { recursive: true });
  const { time, answer, version } = await showInChromium(playwright, folder, shot, NotChecked);
  const { shown: clock } = JSON.parse(answer);
  if (time !== `Develop ${clock}`)
    throw new Error(`the page shows ${JSON.stringify(time)}, not the time ${clock}`);
  return { answer, version: `Chromium ${version}` };
}

async function builtByEsbuild() {
  const { build } = await import("esbuild");
  await build({
    entryPoints: [join(bundled, "page.ts")],
    outfile: join(bundled, "page.js"),
    bundle: true,
    minify: true,
    format: "esm",
    logLevel: "silent",
  });
  return shown(bundled, "esbuild");
}

/** The default export of a tool in the cache, or the whole module. */
async function imported(name, ...path) {
  const module = await import(pathToFileURL(tool(name, ...path)));
  return module.default ?? module;
}

async function builtByVite() {
  const folder = project("vite", "module", {
    "page.ts": "page.ts",
    "typed.ts": "typed.ts",
    "sweep.mjs": "sweep.mjs",
    "index.html": "page.html",
  });
  writeFileSync(
    join(folder, "index.html"),
    readFileSync(join(folder, "index.html"), "utf8").replace('src="page.js"', 'src="/page.ts"'),
  );
  const { build } = await import(pathToFileURL(tool("Vite", "vite", "dist/node/index.js")));
  await build({ root: folder, base: "./", configFile: false, logLevel: "silent", build: { assetsDir: "." } });
  return shown(join(folder, "dist"), "vite");
}

async function builtByWebpack() {
  const webpack = await imported("webpack", "webpack", "lib/index.js");
  const folder = join(scratch, "esm");
  await new Promise((done, fail) =>
    webpack(
      {
        mode: "production",
        context: folder,
        entry: "./main.mjs",
        target: "node20",
        externalsPresets: { node: true },
        output: { path: join(scratch, "webpack"), filename: "main.cjs" },
      },
      (error, stats) =>
        error ? fail(error) : stats.hasErrors() ? fail(new Error(stats.toString("errors-only"))) : done(),
    ),
  );
  return "webpack";
}

async function builtByRollup() {
  const { rollup } = await import(pathToFileURL(tool("Rollup", "rollup", "dist/es/rollup.js")));
  const resolve = await imported("Rollup's resolver", "@rollup/plugin-node-resolve", "dist/es/index.js");
  const build = await rollup({
    input: join(scratch, "esm/main.mjs"),
    plugins: [resolve()],
    external: /^node:/,
  });
  await build.write({ file: join(scratch, "rollup/main.mjs"), format: "es" });
  return "rollup";
}

/** A bundle, run beside the bath's data; it holds no import of the package. */
async function bundleOf(build, file) {
  const name = await build();
  cpSync(join(here, "consumers/bath.json"), join(scratch, name, "bath.json"));
  if (/(from|require\()\s*["']darkroom-kinetics["']/.test(readFileSync(join(scratch, name, file), "utf8")))
    throw new Error("the bundle still imports the package");
  return node(process.execPath, name, file);
}

function jest() {
  const folder = project("jest", "commonjs", { "main.cjs": "cjs.cjs" });
  cpSync(join(scratch, "cjs/sweep.cjs"), join(folder, "sweep.cjs"));
  writeFileSync(
    join(folder, "same.test.js"),
    `const { writeFileSync } = require("node:fs");
test("the bath and the sweep", () => {
  const said = [];
  jest.spyOn(console, "log").mockImplementation((text) => said.push(text));
  require("./main.cjs");
  expect(said).toHaveLength(1);
  writeFileSync("answer.json", said[0]);
});
`,
  );
  const program = tool("Jest", "jest", "bin/jest.js");
  run(process.execPath, [program, "--rootDir", folder], folder);
  return {
    version: `Jest ${version(process.execPath, program)}`,
    answer: readFileSync(join(folder, "answer.json"), "utf8"),
  };
}

const version = (program, ...args) =>
  run(program, [...args, "--version"], scratch)
    .trim()
    .split("\n")[0];
const nodeOf = (major) => tool(`Node ${major}`, `node-${major}`, "bin", "node");
const node = (program, folder, file) => ({
  version: `Node ${version(program)}`,
  answer: run(program, [file], join(scratch, folder)),
});
/**
 * What Node prints of an error that nothing catches: the sentence, where it was thrown, and no line too long to
 * read.
 */
function uncaught() {
  const call = `compensate({ timeS: "8:30", temperatureC: 20 }, {});\n`;
  const scripts = {
    "esm/error.mjs": `import { compensate } from "darkroom-kinetics";\n${call}`,
    "cjs/error.cjs": `const { compensate } = require("darkroom-kinetics");\n${call}`,
  };
  for (const [file, text] of Object.entries(scripts)) {
    writeFileSync(join(scratch, file), text);
    const { stderr } = spawnSync(process.execPath, [join(scratch, file)], { encoding: "utf8" });
    if (!stderr.includes('TypeError: compensate: baseline.timeS must be a number, got "8:30"'))
      throw new Error(`${file} does not show the sentence: ${stderr.slice(0, 200)}`);
    if (!/^ +at compensate \(/m.test(stderr)) throw new Error(`${file} has no stack that names compensate`);
    const longest = Math.max(...stderr.split("\n").map((line) => line.length));
    if (longest > 300) throw new Error(`${file} shows a line of ${longest} characters`);
  }
  return { version: `Node ${version(process.execPath)}` };
}

const compiler = () =>
  run(process.execPath, [join(root, "node_modules/typescript/bin/tsc"), "--version"], root)
    .trim()
    .replace("Version", "TypeScript");

const cases = [
  ["ES module", () => node(process.execPath, "esm", "main.mjs")],
  ["CommonJS", () => node(process.execPath, "cjs", "main.cjs")],
  ["uncaught error", uncaught],
  ["ES module, Node 22", () => node(nodeOf(22), "esm", "main.mjs")],
  ["CommonJS, Node 22", () => node(nodeOf(22), "cjs", "main.cjs")],
  ["ES module, Node 24", () => node(nodeOf(24), "esm", "main.mjs")],
  ["CommonJS, Node 24", () => node(nodeOf(24), "cjs", "main.cjs")],
  ["CommonJS under Jest", jest],
  ["TypeScript nodenext, .mts", () => ({ version: compiler(), answer: nodenext("m") })],
  ["TypeScript nodenext, .cts", () => ({ version: compiler(), answer: nodenext("c") })],
  ["TypeScript bundler, types", () => (bundlerTypes(), { version: compiler() })],
  [
    "Deno",
    () => {
      const program = denoProgram();
      return {
        version: version(program),
        answer: run(
          program,
          ["run", "--quiet", "--no-lock", "--node-modules-dir=manual", `--allow-read=${scratch}`, "main.mjs"],
          join(scratch, "esm"),
        ),
      };
    },
  ],
  ["page built by esbuild", builtByEsbuild],
  ["page built by Vite", builtByVite],
  ["built by webpack", () => bundleOf(builtByWebpack, "main.cjs")],
  ["built by Rollup", () => bundleOf(builtByRollup, "main.mjs")],
];

/** The bath is equal to the last bit, and every number of the sweep to 1e-12; returns the farthest apart. */
function compared(answer) {
  const { sweep, ...bath } = JSON.parse(answer);
  expected ??= { bath: JSON.stringify(bath), sweep };
  if (JSON.stringify(bath) !== expected.bath)
    throw new Error(`another answer than Node's: ${JSON.stringify(bath).slice(0, 200)}`);
  // TypeScript's cases compute the bath alone.
  if (sweep === undefined) return { ...bath, numbers: 0, apart: 0 };
  const names = Object.keys(expected.sweep);
  if (Object.keys(sweep).join() !== names.join())
    throw new Error("the sweep holds other numbers than Node's");
  if (names.length < 5000) throw new Error(`the sweep holds ${names.length} numbers alone`);
  let apart = 0;
  for (const name of names) {
    const [one, other] = [sweep[name], expected.sweep[name]];
    const off = Object.is(one, other) ? 0 : Math.abs(one - other) / Math.abs(other);
    if (!(off <= 1e-12)) throw new Error(`${name} is ${one}, and ${other} on Node ${process.version}`);
    apart = Math.max(apart, off);
  }
  return { ...bath, numbers: names.length, apart };
}

let expected;
let failed = 0;
const missing = [];
const started = performance.now();
const seconds = (since) => `${((performance.now() - since) / 1000).toFixed(1)} s`.padStart(7);
try {
  console.log(`packed ${packAndInstall()} and installed it in ${seconds(started).trim()}`);
  const before = performance.now();
  installTools(here, cache);
  console.log(`the other runtimes were ready in ${seconds(before).trim()}`);
  project("esm", "module", { "main.mjs": "esm.mjs", "sweep.mjs": "sweep.mjs" });
  const sweep = readFileSync(join(here, "consumers/sweep.mjs"), "utf8");
  writeFileSync(
    join(project("cjs", "commonjs", { "main.cjs": "cjs.cjs" }), "sweep.cjs"),
    sweep.replace("export function sweep", "exports.sweep = function sweep"),
  );
  for (const [name, work] of cases) {
    const since = performance.now();
    try {
      const { version: of, answer } = await work();
      let said = "as it should be";
      if (answer !== undefined) {
        const found = compared(answer);
        said = `${found.answer.timeS} s`;
        if (found.numbers > 0) said += `, ${found.numbers} numbers to ${found.apart.toExponential(0)}`;
      }
      console.log(`ok      ${name.padEnd(27)} ${seconds(since)}  ${said.padEnd(44)} ${of}`);
    } catch (error) {
      if (error instanceof NotChecked) {
        missing.push(name);
        console.log(`NOT CHECKED  ${name.padEnd(22)} ${error.message}`);
        continue;
      }
      failed += 1;
      console.log(`FAILED  ${name.padEnd(27)} ${seconds(since)}  ${error.message.split("\n")[0]}`);
    }
  }
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
const agree = cases.length - failed - missing.length;
console.log(`${agree} of ${cases.length} runtimes agree, in ${seconds(started).trim()}`);
if (missing.length > 0) console.log(`NOT CHECKED: ${missing.join("; ")}`);
if (failed > 0) process.exitCode = 1;
