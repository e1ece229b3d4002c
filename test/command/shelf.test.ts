/* The command on a shelf: what it brews is what the package proposes. Shelves are invented. */
import { describe, expect, it } from "vitest";
import { describeMixing, proposeBrew, roundEstimate, type ProposedBrew } from "../../src/index.js";
import { de } from "../../src/texts/de.js";
import { ran } from "./machine.js";

const everyday = ["instant-coffee", { ingredient: "soda-anhydrous", massG: 200 }, "ascorbic-acid"] as const;
const sharp = ["instant-coffee", "sodium-hydroxide", "baking-soda", "ascorbic-acid"] as const;
const files = {
  "list.json": everyday,
  "hut.json": {
    "about": "Invented: a hut.",
    "shelf": sharp,
    "volumeMl": "0,5 l",
    "temperatureC": "57.2 °F",
    "material": "plate",
    "spoonMl": 5,
    "x-shop": "valley",
  },
  "poor.json": ["instant-coffee", "baking-soda"],
  "odd.json": { shelf: everyday, volumeMl: 500, spoon: 5 },
};
const brewed = (...words: string[]): string => ran(["brew", ...words], files).out;
const data = (...words: string[]) =>
  (JSON.parse(brewed(...words, "--json")) as { files: readonly [Record<string, unknown>] }).files[0];

describe("a brew from the shelf", () => {
  it("is the proposal of the package, with its time as it is shown", () => {
    const found = proposeBrew({ shelf: everyday, volumeMl: 500, temperatureC: 14, material: "plate" });
    const { proposal, ...asked } = data(
      ..."list.json --volume 0.5l --temperature 14 --material plate".split(" "),
    );
    expect(asked).toEqual({
      file: "list.json",
      volumeMl: 500,
      temperatureC: 14,
      material: "plate",
      spooned: false,
    });
    const { start } = found as ProposedBrew;
    expect(proposal).toEqual(JSON.parse(JSON.stringify({ ...found, rounded: roundEstimate(start) })));
  });
  it("is for film at 20 °C unless it is said otherwise, and on scales has grams alone", () => {
    const out = brewed("list.json", "--volume", "500 ml");
    expect(out).toMatch(
      /^From the shelf: 500 ml at 20 °C, for film\n {4}washing soda, anhydrous {4}27\.0 g\n/,
    );
    expect(out).toMatch(/\n {2}Begin with \d+:\d\d, nine times in ten \d+:\d\d to \d+:\d\d: a guess\.\n/);
  });
  it("is weighed in its steps too where no spoon is named", () => {
    const held = { ...files, "spoon.json": { shelf: everyday, volumeMl: 500, spoonMl: 5 } };
    expect(brewed("list.json", "--volume", "500 ml")).not.toContain("spoon");
    expect(ran(["brew", "spoon.json"], held).out).toContain("level spoons of 5 ml");
  });
  it.each(["film", "plate"])("gives its guess for %s as a file has it, as unsure as it is", (material) => {
    const words = ["list.json", "--volume", "500 ml", "--temperature", "14", "--material", material];
    const out = brewed(...words);
    const [line = ""] = out.split("\n").filter((one) => one.startsWith('    { "baseline"'));
    const begun = JSON.parse(line) as { baseline: { time: string; logSd: number; emulsion?: string } };
    const { time, logSd, emulsion } = begun.baseline;
    const { start } = (data(...words) as { proposal: ProposedBrew }).proposal;
    expect(Math.exp(3.29 * logSd)).toBeCloseTo(start.highS / start.lowS, -1);
    expect(emulsion).toBe(material === "plate" ? "soft" : undefined);
    const timed = ran(["check", "day.json"], { "day.json": line });
    expect(timed.code).toBe(0);
    expect(timed.out).toContain("day.json: sound");
    const old = JSON.stringify({ ...begun, baths: [{ ageH: 20 }] });
    expect(ran(["time", "day.json"], { "day.json": old }).out).toContain("older than its life");
    expect(out).toContain(`Begin with ${time}, `);
    expect(out).toMatch(
      new RegExp(`\n {4}"baseline": \\{ "timeS": \\d+, "temperatureC": 14, "logSd": ${logSd} \\}\n`),
    );
    expect(brewed(...words, "--lang", "de")).toContain("beginnt damit ein Tag");
  });
  it("reads what people write, and lets the command line lead", () => {
    expect(data("hut.json")).toMatchObject({ volumeMl: 500, material: "plate", spooned: true });
    expect(data("hut.json")["temperatureC"]).toBeCloseTo(14, 9);
    const led = data(..."hut.json --volume 1l --temperature 18 --material film".split(" "));
    expect(led).toMatchObject({ volumeMl: 1000, temperatureC: 18, material: "film" });
  });
  it("says how to measure, in columns, and each step with what may hurt there, in both languages", () => {
    const found = proposeBrew({
      shelf: sharp,
      volumeMl: 500,
      temperatureC: 14,
      material: "plate",
      spoonMl: 5,
    });
    const { steps } = found as ProposedBrew;
    const words = ["hut.json", "--temperature", "14"];
    const english = brewed(...words);
    expect(english).toContain(
      "\n    baking soda (bicarbonate)        2.25 level × 5 ml  10.5 g" +
        "\n    sodium hydroxide (caustic soda)  50 ml of 10 %       5.0 g\n",
    );
    describeMixing(steps).forEach((step, i) => {
      expect(english).toContain(`\n    ${i + 1}. ${step}\n`);
    });
    expect(english).toContain("burns eyes and skin");
    expect(english).toContain("never goes back to food");
    const german = brewed(...words, "--lang", "de");
    expect(german).toMatch(/^Aus dem Vorrat: 500 ml bei 14 °C, für Platten\n {2}Invented: a hut\.\n/);
    expect(german).toMatch(/\n {4}Natron {21}2,25 gestrichen × 5 ml {2}10,5 g\n/);
    describeMixing(steps, de.mixing).forEach((step, i) => {
      expect(german).toContain(`\n    ${i + 1}. ${step}\n`);
    });
  });
  it("that gives no brew says why, what would help and how to bake it, and exits as unwise", () => {
    const words = ["poor.json", "--volume", "500 ml"];
    const english = brewed(...words);
    expect(english).toContain("\n  No brew. The alkali on the shelf is too weak.");
    expect(english).toContain(
      "\n  What would help: washing soda, anhydrous.\n  Take care: Baking soda in the oven: ",
    );
    expect(brewed(...words, "--lang", "de")).toContain("\n  Was helfen würde: Waschsoda, wasserfrei.\n");
    expect(ran(["brew", ...words], files).code).toBe(0);
    expect(ran(["brew", ...words, "--strict"], files).code).toBe(1);
    expect(brewed("list.json", "--volume", "500 ml", "--temperature", "2")).toContain(
      "What would help: warmer water.",
    );
  });
  it("tells a field that is not read", () => {
    expect(brewed("odd.json")).toMatch(/Take care: .*spoon/);
  });
  it.each([
    [
      "list.json",
      [],
      'list.json:1:1: how much to brew, as volumeMl in the file or --volume "500 ml", is missing.',
    ],
    ["bad.json", ["--volume", "1 l"], 'bad.json:3:3: /1 must be "instant-coffee"'],
    ["glass.json", [], 'glass.json:6:15: /material must be "film", "plate" or "paper", got "glass".'],
    ["none.json", [], "none.json:1:1: /shelf the list of what is on the shelf is missing."],
    ["text.json", [], "text.json:1:1: the file must be an object."],
  ])("refuses %s %j with its place", (file, more, err) => {
    const held = {
      ...files,
      "bad.json": ["instant-coffee", "baked-soda"],
      "glass.json": { shelf: ["borax"], volumeMl: 500, material: "glass" },
      "none.json": { volumeMl: 500 },
      "text.json": '"borax"',
    };
    const { code, out, err: said } = ran(["brew", file, ...more], held);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(said).toContain(err);
  });
});
