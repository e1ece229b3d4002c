/*
 * npm run apps: packs the package, installs the tarball beside three small apps, compiles them as an app would, strictly, and uses them:
 * a page in headless Chromium in English and German, a service over a folder of recipes, and a script like a notebook. An editor's JSON
 * engine then completes and judges a recipe. The sources of the apps hold no regular expression, no cast and no arithmetic.
 */
import assert from "node:assert/strict";
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
import { fileURLToPath } from "node:url";
import { openInChromium } from "../runtimes/chromium.mjs";
import { installTools, NotChecked, npm, run } from "../tools/installed.mjs";
import { editor } from "./editor.mjs";
import { broken } from "./rules.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const root = fileURLToPath(new URL("../..", import.meta.url));
const cache = join(root, "node_modules/.cache/apps");
const scratch = mkdtempSync(join(tmpdir(), "apps-"));

const [{ filename, files }] = JSON.parse(
  run("npm", ["pack", "--json", "--ignore-scripts", "--pack-destination", scratch], root),
);
writeFileSync(join(scratch, "package.json"), JSON.stringify({ name: "apps", private: true, type: "module" }));
const hasGerman = files.some(({ path }) => path === "dist/texts/de.js");

const strict = {
  strict: true,
  exactOptionalPropertyTypes: true,
  noUncheckedIndexedAccess: true,
  noPropertyAccessFromIndexSignature: true,
  noImplicitReturns: true,
  skipLibCheck: false,
  verbatimModuleSyntax: true,
  target: "ES2022",
};

/** An app, compiled where the package is installed. */
function compiled(name, compilerOptions) {
  const folder = join(scratch, name);
  cpSync(join(here, name), folder, { recursive: true });
  if (name === "page" && !hasGerman)
    writeFileSync(join(folder, "german.ts"), "export const german = undefined;\n");
  writeFileSync(
    join(folder, "tsconfig.json"),
    JSON.stringify({ compilerOptions: { ...strict, ...compilerOptions }, include: ["*.ts"] }),
  );
  run(process.execPath, [join(cache, "node_modules/typescript/bin/tsc"), "-p", folder], folder);
  return folder;
}
const forNode = {
  module: "nodenext",
  moduleResolution: "nodenext",
  lib: ["ES2022"],
  types: ["node"],
  typeRoots: [join(root, "node_modules/@types")],
};

function obeysRules() {
  const sources = readdirSync(here, { recursive: true }).filter((path) => path.endsWith(".ts"));
  assert.ok(sources.length >= 6);
  assert.deepEqual(
    sources.flatMap((path) => broken(path, readFileSync(join(here, path), "utf8"))),
    [],
  );
  // The rules see what they forbid.
  const bad = "const a = /x/.test(b) as unknown as string; c!.message.split(' '); Math.exp(1); let d: any;";
  assert.equal(broken("bad.ts", bad).length, 7);
  return `${sources.length} files`;
}

async function page() {
  const folder = compiled("page", {
    module: "esnext",
    moduleResolution: "bundler",
    lib: ["ES2022", "DOM"],
    types: [],
    noEmit: true,
  });
  const { build } = await import("esbuild");
  await build({
    entryPoints: [join(folder, "page.ts")],
    outfile: join(folder, "page.js"),
    bundle: true,
    minify: true,
    format: "esm",
    logLevel: "silent",
  });
  const playwright = join(cache, "node_modules/playwright-core/index.js");
  return openInChromium(
    playwright,
    folder,
    async (view, { errors, version }) => {
      const text = (id) => view.locator(`#${id}`).innerText();
      const answer = async () => JSON.parse(await view.locator("#answer").textContent()).answer;
      const english = await answer();
      assert.match(await text("time"), /^\d+:\d\d \(\d+:\d\d–\d+:\d\d\)$/);
      assert.match(await text("lines"), /^Develop .* with 90 % certainty between /);
      assert.match(await text("why"), /temperature, 20 °C to 14 °C: /);
      assert.match(await text("plan"), /Rock the tray/);
      assert.match(await text("step"), /^develop → /);
      // What cannot be read is told where it stands; the last good answer stays.
      await view.locator("#todayDilution").fill("1:9");
      assert.match(await text("todayDilution-wrong"), /1\+9|1\+8/);
      await view.locator("#todayDilution").fill("1+14");
      await view.locator("#todayC").fill("680 °C");
      assert.match(await text("todayC-wrong"), /0 .*100/);
      assert.deepEqual(await answer(), english);
      await view.locator("#todayC").fill("57 °F");
      assert.equal(
        (await answer()).factors.find(({ cause }) => cause === "temperature").to.toFixed(3),
        "13.889",
      );
      await view.locator("#todayC").fill("14 °C");
      // A run in progress: a reading that can be believed, and one in the other unit.
      await view.locator("#reading").fill("13.8");
      assert.match(await text("run"), /^left \d+:\d\d\s*$/);
      await view.locator("#reading").fill("57 °C");
      assert.match(await text("run"), /left .* This reading is in doubt\.$/);
      await view.locator("#reading").fill("");
      await view.locator("#de").click();
      assert.equal(await text("title"), "Wie lange heute?");
      assert.deepEqual(await answer(), english);
      mkdirSync(join(root, "reports"), { recursive: true });
      await view.screenshot({ path: join(root, "reports/apps-page.png"), fullPage: true });
      assert.deepEqual(errors, []);
      if (!hasGerman)
        return {
          said: `Chromium ${version}, English`,
          missing: "the page in German: the tarball has no texts/de",
        };
      const german = [await text("lines"), await text("why"), await text("plan")].join("\n");
      assert.match(german, /entwickeln|Entwickeln/);
      for (const word of [
        /\bDevelop\b/,
        /\bcertainty\b/,
        /\bgive or take\b/,
        /\bTake care\b/,
        /\bRock the tray\b/,
      ])
        assert.doesNotMatch(german, word);
      return { said: `Chromium ${version}, English and German` };
    },
    NotChecked,
  );
}

function service() {
  const folder = compiled("service", forNode);
  const reports = JSON.parse(run(process.execPath, ["main.js"], folder));
  const by = Object.fromEntries(reports.map((report) => [report.file, report]));
  assert.deepEqual(Object.keys(by), [
    "a-hut-plate.json",
    "b-fahrenheit.json",
    "c-broken.json",
    "d-newer.json",
  ]);
  assert.deepEqual(
    reports.map(({ ok }) => ok),
    [true, false, false, false],
  );
  assert.match(by["a-hut-plate.json"].time, /^\d+:\d\d$/);
  assert.deepEqual(by["a-hut-plate.json"].steps, ["develop", "stop", "fix", "wash"]);
  assert.deepEqual(
    by["b-fahrenheit.json"].problems.map(({ code, path }) => `${code} ${path}`).sort(),
    ["ambiguous /developer/dilution", "out-of-range /baseline/temperatureC", "not-one-of /condition"].sort(),
  );
  const [{ line, column }] = by["c-broken.json"].problems;
  assert.deepEqual([line, column], [3, 10]);
  assert.equal(by["d-newer.json"].problems[0].path, "/schemaVersion");
  return { said: `${reports.length} files, ${reports.flatMap(({ problems }) => problems).length} problems` };
}

function notebook() {
  const folder = compiled("notebook", forNode);
  const { read, rejected, before, after, first, kept, rows } = JSON.parse(
    run(process.execPath, ["notebook.js"], folder),
  );
  assert.equal(read, 4);
  assert.deepEqual(
    rejected.map(({ row, problems }) => [row, problems[0].code]),
    [[5, "ambiguous"]],
  );
  const width = ({ lowS, highS }) => Math.log(highS / lowS);
  assert.ok(width(after) < 0.9 * width(before), "four runs narrow the interval");
  assert.ok(after.timeS > 510, "colder and more dilute takes longer");
  assert.deepEqual([kept.timeS, kept.lowS, kept.highS], [after.timeS, after.lowS, after.highS]);
  assert.equal(typeof first, "object");
  assert.deepEqual(rows.map(({ timeS }) => timeS).sort(), [510, 510, 570, 720]);
  return { said: `${read} runs, ${rejected.length} rejected, kept to the last bit` };
}

async function inEditor() {
  writeFileSync(join(scratch, "editor.txt"), "");
  const { fields, inside, values, sound, wrong, missing, hover } = await editor(cache, scratch);
  for (const name of ["material", "developer", "baseline", "knowledge", "byInspection"])
    assert.ok(fields.includes(name), `completes ${name}`);
  for (const name of ["timeS", "temperatureC", "dilution"])
    assert.ok(inside.includes(name), `completes baseline.${name}`);
  assert.deepEqual([...values].sort(), ['"film"', '"paper"', '"plate"']);
  assert.deepEqual(sound, []);
  assert.deepEqual(wrong.map(({ line }) => line).sort(), [1, 3]);
  assert.equal(missing.length, 3, "three fields are missing");
  assert.match(JSON.stringify(hover), /in seconds|, in s\b|time/i);
  return { said: `${fields.length} fields completed, ${wrong.length + missing.length} places marked` };
}

let failed = 0;
const notChecked = [];
try {
  npm(["install", `./${filename}`], scratch);
  installTools(here, cache);
  for (const [name, work] of [
    ["rules", () => ({ said: obeysRules() })],
    ["page", page],
    ["service", service],
    ["notebook", notebook],
    ["editor", inEditor],
  ])
    try {
      const { said, missing } = await work();
      if (missing !== undefined) notChecked.push(missing);
      console.log(`ok      ${name.padEnd(9)} ${said}`);
    } catch (error) {
      if (error instanceof NotChecked) notChecked.push(`${name}: ${error.message}`);
      else {
        failed += 1;
        console.log(`FAILED  ${name.padEnd(9)} ${error.message}`);
      }
    }
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
if (notChecked.length > 0) console.log(`NOT CHECKED: ${notChecked.join("; ")}`);
if (failed > 0) process.exitCode = 1;
