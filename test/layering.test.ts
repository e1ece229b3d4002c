/* The arrows of the layers: which module may import which. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { filesBelow } from "./docs/examples.js";

const GROUND = ["core", "quantities", "handbook"];
const CAUSES = [
  "temperature",
  "dilution",
  "agitation",
  "use",
  "age",
  "contrast",
  "push",
  "strength",
  "inspection",
  "brew",
];
/** What stands on whole answers imports these. */
const ANSWERED = [...GROUND, ...CAUSES, "drift", "bath", "causes", "compensate", "process", "text"];
const ABOVE: Readonly<Record<string, readonly string[]>> = {
  core: ["core"],
  handbook: ["core", "handbook"],
  quantities: [...GROUND],
  ...Object.fromEntries(CAUSES.map((module) => [module, [...GROUND, module]])),
  // A rule of use is printed for a dilution.
  use: [...GROUND, "dilution", "use"],
  // A first time for a brew is known at 20 °C only, and a brew has a life.
  brew: [...GROUND, "temperature", "age", "brew"],
  interaction: [...GROUND, "temperature", "dilution", "interaction"],
  drift: [...GROUND, "temperature", "drift"],
  bath: [...GROUND, "dilution", "use", "age", "brew", "bath"],
  text: [
    ...GROUND,
    ...CAUSES,
    "drift",
    "bath",
    "causes",
    "pairs",
    "compensate",
    "process",
    "steering",
    "text",
  ],
  compensate: [...GROUND, ...CAUSES, "interaction", "drift", "bath", "causes", "pairs", "compensate"],
  learning: [
    ...GROUND,
    ...CAUSES,
    "interaction",
    "drift",
    "bath",
    "causes",
    "pairs",
    "compensate",
    "learning",
  ],
  notes: [...GROUND, ...CAUSES, "drift", "causes", "compensate", "learning", "notes"],
  process: [...GROUND, ...CAUSES, "drift", "bath", "causes", "compensate", "process"],
  steering: [...GROUND, ...CAUSES, "drift", "causes", "compensate", "process", "steering"],
  recipe: [...ANSWERED, "learning", "recipe"],
  // Above the answers and the recipes; nothing below draws.
  picture: [...ANSWERED, "learning", "recipe", "picture"],
  chart: [...ANSWERED, "recipe", "picture", "chart"],
  // Another language says what every module says; nothing below imports it.
  texts: [
    ...GROUND,
    ...CAUSES,
    "drift",
    "causes",
    "pairs",
    "compensate",
    "learning",
    "process",
    "notes",
    "steering",
    "text",
    "picture",
    "chart",
    "texts",
  ],
  // The command is a user of the package. Of its ground it takes the rules that no app needs: places in JSON, clocks.
  command: ["index", "texts", "core", "quantities", "command"],
};

const files = filesBelow("src", [".ts"]).filter(
  (path) => !["src/index.ts", "src/causes.ts", "src/pairs.ts"].includes(path),
);
const imports = files.flatMap((path) =>
  [...readFileSync(path, "utf8").matchAll(/from "(\.\.?\/[^"]+)"/g)].map((match) => ({
    path,
    module: path.split("/")[1] as string,
    target: (new URL(match[1] as string, `file:///${path}`).pathname.split("/")[2] as string).replace(
      ".js",
      "",
    ),
  })),
);

describe("the layers", () => {
  it("has no module that the plan does not know", () => {
    expect(
      [...new Set(files.map((path) => path.split("/")[1]))].filter((module) => !(module! in ABOVE)),
    ).toEqual([]);
    expect(imports.length).toBeGreaterThan(50);
  });
  it("points its arrows down", () => {
    expect(imports.filter(({ module, target }) => !ABOVE[module]?.includes(target))).toEqual([]);
  });
  it("keeps the dependencies that do not shake in their one place", () => {
    const importers = (name: string): string[] =>
      files.filter((path) => readFileSync(path, "utf8").includes(`from "${name}"`));
    expect(importers("d3-interpolate")).toEqual(["src/compensate/temperatureCurve.ts"]);
    expect(importers("decimal.js")).toEqual(["src/dilution/mixVolumes.ts"]);
  });
  it("names all causes in one file only", () => {
    const names = ["temperature", "dilution", "agitation", "use", "age", "strength", "contrast", "push"];
    const naming = filesBelow("src", [".ts"]).filter((path) => {
      const text = readFileSync(path, "utf8");
      return names.every((name) => text.includes(`/${name}/cause.js"`));
    });
    expect(naming).toEqual(["src/causes.ts"]);
  });
  it("has files that hold one thing", () => {
    const long = files.filter(
      (path) => !path.includes("handbook") && readFileSync(path, "utf8").split("\n").length > 300,
    );
    expect(long).toEqual([]);
  });
});
