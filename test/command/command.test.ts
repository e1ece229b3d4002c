/* The command on files in memory: its numbers are those of the package, its exit codes those of docs/command.md. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  chartCsv,
  chartSvg,
  checkRecipe,
  compensate,
  compensateRecipe,
  formatTime,
  pictureSvg,
  recipePicture,
  roundEstimate,
  timeChart,
  type Recipe,
} from "../../src/index.js";
import { day, ran, recipe } from "./machine.js";

const files = { "recipe.json": recipe, "day.json": day };
const checked = checkRecipe(recipe) as { readonly recipe: Recipe };
const baseline = { timeS: 540, temperatureC: 20, dilution: "1+9", hydroquinone: true } as const;
/** What --json prints, as far as it is looked at. */
interface Printed {
  readonly answers: readonly { readonly name: string }[];
  readonly problems: readonly { readonly path: string }[];
  readonly cautions: readonly { readonly code: string; readonly path: string }[];
  readonly ok: boolean;
  readonly chart: unknown;
}
const json = (text: string): readonly [Printed, Printed] =>
  (JSON.parse(text) as { readonly files: readonly [Printed, Printed] }).files;
/** The invented day, to be spoilt. */
const invented = (): {
  brew: { spoons: { ingredient: string }[]; reference: object; temperatureC: number };
  table: object;
} => JSON.parse(readFileSync("docs/workshop/day.json", "utf8")) as ReturnType<typeof invented>;
const span = (estimate: Parameters<typeof roundEstimate>[0]): string => {
  const { timeS, lowS, highS } = roundEstimate(estimate);
  return `Develop ${formatTime(timeS)}, nine times in ten ${formatTime(lowS)} to ${formatTime(highS)}.`;
};

describe("what is said beside every answer", () => {
  const WORDS = {
    en: [/gloves/i, /fresh air/i, /silver/i, /safety data sheets/i, /local code/i],
    de: [/Handschuhe/, /frische Luft|lüften/i, /Silber/, /Sicherheitsdatenbl/, /örtliche/i],
  } as const;
  it.each(
    (["en", "de"] as const).flatMap((lang) =>
      [["time"], ["check"], ["plan"], ["chart"], ["chart", "--wall"]].flatMap((asked) =>
        ["recipe.json", "day.json"]
          .filter((file) => asked[0] !== "plan" || file === "recipe.json")
          .map((file) => [lang, asked, file] as const),
      ),
    ),
  )("%s %j %s names gloves, air, silver and data sheets, once each", (lang, asked, file) => {
    const { code, out } = ran([...asked, file, "--lang", lang], files);
    expect(code).toBe(0);
    // A page to print breaks its lines.
    const words = out.replace(/<[^>]*>\s*/g, " ");
    for (const word of WORDS[lang]) expect(words).toMatch(word);
    for (const once of [WORDS[lang][0], WORDS[lang][3]])
      expect(words.match(new RegExp(once, "gi"))).toHaveLength(1);
  });
});

describe("time", () => {
  it("gives a recipe the time of compensateRecipe, rounded as roundEstimate does", () => {
    const { code, out, err } = ran(["time", "recipe.json"], files);
    expect([code, err]).toEqual([0, ""]);
    expect(out).toContain("Known: 9:00 at 20 °C, 1+9.");
    expect(out).toContain(span(compensateRecipe(checked.recipe)));
  });
  it("gives each bath of a day the time of compensate", () => {
    const { code, out } = ran(["time", "day.json"], files);
    expect(code).toBe(0);
    for (const { name, ...conditions } of day.baths)
      expect(out).toContain(`${name}\n  ${span(compensate(baseline, conditions, day.laws))}`);
  });
  it("takes today's temperature and dilution from the command line", () => {
    const conditions = { temperatureC: 16, dilution: "1+14" };
    const asked = ["--temperature", "16", "--dilution=1+14"];
    expect(ran(["time", "recipe.json", ...asked], files).out).toContain(
      span(compensateRecipe(checked.recipe, conditions)),
    );
    const ofDay = ran(["time", "day.json", ...asked], files).out;
    expect(ofDay).toContain(
      `As asked, all else as known\n  ${span(compensate(baseline, conditions, day.laws))}`,
    );
    expect(ofDay).not.toContain("Morning");
    // The only bath of a day keeps what is not asked otherwise.
    const one = { ...day, baths: [{ name: "Tonight", temperatureC: 17.5, pushStops: "+1" }] };
    const ofOne = ran(["time", "o.json", "--temperature", "18"], { "o.json": one }).out;
    const pushed = compensate(baseline, { temperatureC: 18, pushStops: 1 }, day.laws);
    expect(ofOne).toContain(`As asked\n  ${span(pushed)}`);
    expect(ran(["time", "day.json", "--temperature", "60.8 °F"], files).out).toContain(
      span(compensate(baseline, { temperatureC: 16 }, day.laws)),
    );
  });
  it("gives no time where it is refused, only the reason", () => {
    const { code, out } = ran(["time", "recipe.json", "--temperature", "10"], files);
    expect(code).toBe(0);
    expect(out).toMatch(/No time\.\n {4}Stop: Hydroquinone/);
    expect(out).not.toContain("Develop");
    expect(ran(["time", "recipe.json", "--temperature", "10", "--strict"], files).code).toBe(1);
  });
  it("gives the same as data, unrounded and rounded", () => {
    const { out } = ran(["time", "recipe.json", "day.json", "--json"], files);
    const answer = compensateRecipe(checked.recipe);
    const [first, second] = json(out);
    expect(first.answers[0]).toMatchObject({
      timeS: answer.timeS,
      refused: false,
      rounded: roundEstimate(answer),
    });
    expect(second.answers.map(({ name }) => name)).toEqual(["Morning", "Evening"]);
  });
  it("reads the invented day with its brew and its table", () => {
    const text = readFileSync("docs/workshop/day.json", "utf8");
    const { code, out } = ran(["time", "day.json"], { "day.json": text });
    expect(code).toBe(0);
    expect(out).toMatch(/pH \d+\.\d/);
    expect(out).toMatch(/1\. Wear gloves and glasses/);
    expect(out).toMatch(/68 °F, 20 °C +printed 5:00/);
    expect(out).not.toMatch(/NaN|undefined|Infinity|\[object/);
  });
  it("keeps what is said of the ingredients of a brew that gets no time", () => {
    const weak = invented();
    weak.brew.spoons[0]!.ingredient = "baking-soda";
    const { out } = ran(["time", "day.json"], { "day.json": { ...weak, baths: undefined } });
    expect(out).toMatch(/No time\.\n {4}Stop: Not alkaline enough/);
    expect(out).toMatch(/Local codes and safety data sheets/);
    expect(out).not.toContain("Develop");
  });
  it("names a field that it does not read", () => {
    const { out } = ran(["time", "day.json"], { "day.json": { ...day, bahts: [] } });
    expect(out).toContain('Take care: The field "bahts" is not read.');
  });
  it("reads the conditions of a day as people say them, and points to words that say nothing", () => {
    const said = {
      baseline: { time: "9:00", temperatureC: "68 °F", agitation: "every 60 s" },
      baths: [{ temperatureC: "14,5 °C", usedCm2PerL: "2 rolls/l", ageH: "3 h", pushStops: "+1" }],
    };
    const figures = {
      baseline: { time: "9:00", temperatureC: 20, agitation: { everyS: 60 } },
      baths: [{ temperatureC: 14.5, usedCm2PerL: 2 * 516.128, ageH: 3, pushStops: 1 }],
    };
    const { code, out } = ran(["time", "day.json"], { "day.json": said });
    expect(code).toBe(0);
    expect(out).toBe(ran(["time", "day.json"], { "day.json": figures }).out);
    const pushed = (pushStops: unknown): string =>
      ran(["time", "day.json"], { "day.json": { ...said, baths: [{ pushStops }] } }).out;
    for (const [words, stops] of Object.entries({ "push 1": 1, "N+1": 1, "pull 1": -1, "1 Blende": 1 }))
      expect(pushed(words)).toBe(pushed(stops));
    const wrong = { ...said, baths: [{ ageH: "2 dys" }] };
    expect(ran(["time", "day.json"], { "day.json": wrong }).err).toMatch(
      /^day\.json:\d+:\d+: \/baths\/0\/ageH must be an age such as "2 h" or "3 days", got "2 dys"\./,
    );
  });
  it("says what is odd about the known time of a day without baths", () => {
    const bare = { "b.json": { baseline: { time: "0:08", temperatureC: 68 } } };
    const { code, out } = ran(["time", "b.json"], bare);
    expect(code).toBe(0);
    expect(out).toContain("The time is 8 s. Is it in minutes? [/baseline/time]\n");
    expect(out).toContain("Stop: 68 °C: is it in °F? 68 °F is 20.0 °C. [/baseline/temperatureC]\n");
    expect(ran(["time", "b.json", "--strict"], bare).code).toBe(1);
    const [report] = json(ran(["check", "b.json", "--json"], bare).out);
    expect(report.cautions.map(({ path }) => path).sort()).toEqual([
      "/baseline",
      "/baseline/temperatureC",
      "/baseline/time",
    ]);
    const sound = { "b.json": { baseline: { time: "9:00", temperatureC: 20 } } };
    expect(ran(["check", "b.json"], sound).out).toContain("b.json: sound.\n");
  });
  it("asks what a time with a point means, the clock first", () => {
    const dotted = { "d.json": { baseline: { time: "8.30", temperatureC: 20 } } };
    const { code, err } = ran(["time", "d.json"], dotted);
    expect(code).toBe(2);
    expect(err).toMatch(/\/baseline\/time must be "8:30", "8 min 18 s" or "8.30 s", got "8.30"\.\n$/);
    expect(ran(["time", "d.json", "--lang", "de"], dotted).err).toContain(
      "nötig ist „8:30“, „8 min 18 s“ oder „8,30 s“, hier steht „8.30“",
    );
  });
  it("refuses a misspelt field of a bath or the known time, which would mean: as in the baseline", () => {
    const wrong = (changed: object): string => {
      const { code, out, err } = ran(["time", "day.json"], { "day.json": { ...day, ...changed } });
      expect([code, out]).toEqual([2, ""]);
      return err;
    };
    expect(wrong({ baths: [day.baths[0], { name: "B", temperature: 57 }] })).toMatch(
      /^day\.json:\d+:\d+: \/baths\/1\/temperature must be a field that is read, perhaps temperatureC \(/,
    );
    expect(wrong({ baseline: { ...day.baseline, dilutoin: "1+9" } })).toMatch(
      /\/baseline\/dilutoin .*perhaps dilution \(all are time, temperatureC, .*, note\), got "dilutoin"/,
    );
    const asText = /\/baseline\/timeS a day has the known time as text: write "time": "9:00"\.\n$/;
    expect(wrong({ baseline: { timeS: 540, temperatureC: 20 } })).toMatch(asText);
    expect(wrong({ baseline: { ...day.baseline, timeS: 540 } })).toMatch(asText);
  });
  it("reads all fields of a known time and of conditions, and leaves one's own alone", () => {
    const conditions = { "agitation": { everyS: 30 }, "usedCm2PerL": 10, "ageH": 1, "x-sink": "left" };
    const known = { ...day.baseline, ...conditions, agitation: "continuous", logSd: 0.05, sources: ["box"] };
    const bath = { name: "B", temperatureC: 18, ...conditions, thermometer: "glass", by: "the host" };
    const whole = { ...day, baseline: known, baths: [bath] };
    const { code, out, err } = ran(["time", "day.json"], { "day.json": whole });
    expect([code, err]).toEqual([0, ""]);
    expect(out).not.toContain("not read");
  });
});

describe("a field of a day file that is not read", () => {
  // An invented day that is sound but for this field.
  const sound = { ...day, baths: [{ name: "Noon", temperatureC: 20 }] };
  const odd = { ...sound, wether: "rain" };
  it.each([
    ["check", [], "Take care"],
    ["time", [], "Take care"],
    ["chart", ["--temperature", "20", "--dilution", "1+9"], "Take care"],
    ["chart", ["--svg"], "Take care"],
    ["check", ["--lang", "de"], "Vorsicht"],
    ["time", ["--lang", "de"], "Vorsicht"],
  ])("is told, and minded by --strict: %s %j", (command, options, grave) => {
    const all = [command, "day.json", "--strict", ...options];
    expect(ran(all, { "day.json": sound }).code).toBe(0);
    const { code, out } = ran(all, { "day.json": odd });
    expect(code).toBe(1);
    expect(out).toMatch(new RegExp(`${grave}: .*wether`));
    expect(out).not.toContain("undefined");
  });
  it.each([
    ["--csv", "en", "Take care"],
    ["--wall", "de", "Vorsicht"],
  ])("is told beside a chart that has no place for it: %s", (form, lang, grave) => {
    const asked = ["chart", "day.json", form, "--lang", lang, "--temperature", "20", "--dilution", "1+9"];
    expect(ran(asked, { "day.json": sound }).err).toBe("");
    const { code, out, err } = ran([...asked, "--strict"], { "day.json": odd });
    expect(code).toBe(1);
    expect(err).toMatch(new RegExp(`^day\\.json: ${grave}: .*wether.*\n$`));
    expect(out).toBe(ran(asked, { "day.json": sound }).out);
  });
  it("has its place in check", () => {
    const [report] = json(ran(["check", "day.json", "--json"], { "day.json": odd }).out);
    expect(report).toMatchObject({
      ok: true,
      cautions: [{ code: "unknown-field", path: "/wether", line: 23, column: 13 }],
    });
  });
});

describe("check", () => {
  it("finds a sound recipe sound, with its cautions", () => {
    const { code, out } = ran(["check", "recipe.json"], files);
    expect(code).toBe(0);
    expect(out).toMatch(/recipe\.json: sound/);
    const far = { "hot.json": { ...recipe, conditions: { temperatureC: 40 } } };
    const hot = ran(["check", "hot.json"], far).out;
    expect(hot).toContain("Stop: ");
    expect(hot).not.toContain("sound");
    expect(ran(["check", "day.json", "--strict"], files).code).toBe(1);
  });
  it("tells each problem with line and column", () => {
    const wrong = { ...recipe, baseline: { timeS: -9, temperatureC: 20 }, metrial: 1 };
    const text = JSON.stringify(wrong, undefined, 2);
    const { code, out } = ran(["check", "recipe.json"], { "recipe.json": text });
    expect(code).toBe(2);
    const line = text.split("\n").findIndex((one) => one.includes('"timeS"')) + 1;
    expect(out).toContain(`recipe.json:${line}:14: /baseline/timeS must be`);
    expect(out).toMatch(/recipe\.json:\d+:\d+: \/metrial must be a field that is read.*, got "metrial"/);
    expect(out).not.toContain("sound");
  });
  it("tells all problems of a day, each once", () => {
    const wrong = { ...day, baths: [{ temperatureC: 300 }, { dilution: "1:9" }, { usedCm2PerL: -1 }] };
    const { code, out } = ran(["check", "day.json", "--json"], { "day.json": wrong });
    expect(code).toBe(2);
    const paths = json(out)[0].problems.map(({ path }) => path);
    expect(paths).toEqual(["/baths/0/temperatureC", "/baths/1/dilution", "/baths/2/usedCm2PerL"]);
  });
  it("goes on after what cannot be read, and tells no gap that follows from it", () => {
    const pathsOf = (wrong: object): readonly string[] =>
      json(ran(["check", "day.json", "--json"], { "day.json": wrong }).out)[0].problems.map(
        ({ path }) => path,
      );
    const baths = [
      { name: 7, temperature: 18, dilutoin: "1+9" },
      null,
      { temperatureC: 300 },
      { dilution: "1:9", ages: 3 },
    ];
    const ofBaths = [
      "/baths/0/temperature",
      "/baths/0/dilutoin",
      "/baths/0/name",
      "/baths/1",
      "/baths/3/ages",
      "/baths/2/temperatureC",
      "/baths/3/dilution",
    ];
    expect(pathsOf({ ...day, baths })).toEqual(ofBaths);
    const seconds = { ...day.baseline, time: undefined, timeS: 540, temp: 20 };
    const ofBoth = ["/baseline/timeS", "/baseline/temp", ...ofBaths];
    expect(pathsOf({ ...day, baseline: seconds, baths })).toEqual(ofBoth);
    expect(pathsOf({ ...day, baseline: { ...day.baseline, time: "9" }, laws: [], brew: 1 })).toEqual([
      "/baseline/time",
      "/laws",
      "/brew",
    ]);
    expect(pathsOf({ ...day, baseline: [], baths: [{ temperature: 14 }] })).toEqual([
      "/baseline",
      "/baths/0/temperature",
    ]);
  });
  it("tells what is wrong with a brew and a table", () => {
    const whole = invented();
    const wrong = {
      ...whole,
      brew: { ...whole.brew, spoons: {} },
      table: { ...whole.table, unit: "f" },
    };
    const { out } = ran(["check", "day.json"], { "day.json": wrong });
    expect(out).toMatch(/\/brew\/spoons the list of spoons must be a list\./);
    expect(out).toMatch(/\/table\/unit the unit must be "C" or "F"\./);
  });
  it("reports broken JSON as a problem among others", () => {
    const { code, out, err } = ran(["check", "a.json", "recipe.json", "--json"], {
      ...files,
      "a.json": '{\n  "a": 1,\n}',
    });
    expect([code, err]).toEqual([2, ""]);
    const [broken, sound] = json(out);
    expect(broken.problems).toEqual([expect.objectContaining({ line: 3, column: 1 })]);
    expect(sound.ok).toBe(true);
  });
  it("places the cautions of a day at its baths", () => {
    const { out } = ran(["check", "day.json", "--json"], files);
    const paths = json(out)[0].cautions.map(({ path }) => path);
    expect(paths).toContain("/baths/0/temperatureC");
    expect(paths.every((path) => path.startsWith("/baths/"))).toBe(true);
  });
});

describe("check of a brew", () => {
  it("places its cautions at its spoons, its temperature and its known time", () => {
    const { brew } = invented();
    const odd = { ...brew, temperatureC: 13, reference: { ...brew.reference, time: "0:15" } };
    const { out } = ran(["check", "day.json", "--json"], { "day.json": { ...day, brew: odd } });
    const placesOf = (code: string): readonly string[] =>
      json(out)[0]
        .cautions.filter((one) => one.code === code && one.path.startsWith("/brew"))
        .map(({ path }) => path);
    expect(placesOf("temperature-unusual")).toEqual(["/brew/temperatureC"]);
    expect(placesOf("maybe-minutes")).toEqual(["/brew/reference/time"]);
    expect(placesOf("spoon-range")).toEqual(["/brew/spoons/0", "/brew/spoons/1", "/brew/spoons/2"]);
    expect(placesOf("gloves-and-glasses")).toEqual(["/brew"]);
  });
});

describe("plan", () => {
  it("moves and mixes the bath as the recipe's conditions say for today", () => {
    const today = {
      ...files["recipe.json"],
      baseline: { timeS: 540, temperatureC: 20, agitation: { everyS: 60 } },
      conditions: { temperatureC: 18, dilution: "1+24", agitation: { everyS: 30 } },
    };
    const { out } = ran(["plan", "t.json"], { "t.json": today });
    expect(out).toMatch(/Every 0:30 until/);
    expect(out).toMatch(/20 ml stock/);
  });
  it("plans a recipe with the time that every other answer shows", () => {
    const { code, out } = ran(["plan", "recipe.json"], files);
    expect(code).toBe(0);
    const { timeS } = roundEstimate(compensateRecipe(checked.recipe));
    expect(out).toContain(`0:00 develop, ${formatTime(timeS)} at 18.0 °C`);
    expect(out).toMatch(/developer 1\+9 500 ml/);
  });
  it("takes vessel, volume and dilution", () => {
    const asked = ["--vessel", "tray", "--volume", "0,8 l", "--dilution", "1+14", "--temperature", "16"];
    const { out } = ran(["plan", "recipe.json", ...asked], files);
    expect(out).toContain("Slide it into the developer.");
    expect(out).toMatch(/developer 1\+14 800 ml/);
    const plate = { ...recipe, material: { name: "plate", kind: "plate" } };
    expect(ran(["plan", "p.json"], { "p.json": plate }).out).toContain("Slide it");
    const brew = {
      volumeMl: 400,
      ingredients: [
        { ingredient: "instant-coffee", massG: 16 },
        { ingredient: "soda-anhydrous", massG: 20 },
      ],
    };
    const brewed = { ...recipe, developer: { kind: "brew", brew } };
    expect(ran(["plan", "b.json"], { "b.json": brewed }).out).toMatch(/400 ml/);
  });
  it("turns a drum without pause, for a time that is reckoned for that", () => {
    const every60 = {
      ...files["recipe.json"],
      baseline: { timeS: 540, temperatureC: 20, agitation: { everyS: 60 } },
      conditions: { temperatureC: 18 },
    };
    const { out } = ran(["plan", "t.json", "--vessel", "drum"], { "t.json": every60 });
    expect(out).toContain("The recipe says agitation every 60 s.");
    expect(out).not.toContain("Every 1:00 until");
    const tank = ran(["plan", "t.json"], { "t.json": every60 }).out;
    const timeOf = (said: string): string => /develop, (\S+)/.exec(said)![1]!;
    expect(timeOf(out)).not.toBe(timeOf(tank));
  });
  it("is not made of a day, nor with a wrong vessel", () => {
    expect(ran(["plan", "day.json"], files)).toMatchObject({
      code: 2,
      err:
        "day.json: this day has no evening to plan: it needs a part of that name, with its plates, vessel and " +
        "volume. A single film is planned from a recipe. Both are in docs/command.md.\n",
    });
    expect(ran(["plan", "recipe.json", "--vessel", "bucket"], files)).toMatchObject({ code: 3 });
  });
  it("takes a dish for a tray", () => {
    const inA = (vessel: string) => ran(["plan", "recipe.json", "--vessel", vessel], files);
    expect(inA("dish")).toEqual(inA("tray"));
    expect(inA("dish").code).toBe(0);
  });
});

describe("chart", () => {
  const chart = timeChart({
    baseline,
    knowledge: day.laws,
    temperaturesC: [20, 18, 16],
    dilutions: ["1+9", "1+14"],
  });
  it.each([
    [{ ageH: 3 }, {}, "a fresh bath", "ein frisches Bad"],
    [{ agitation: { everyS: 30 } }, { agitation: { everyS: 60 } }, "a fresh bath, agitation every 60 s", ""],
    [{ usedCm2PerL: 800 }, { usedCm2PerL: 500, ageH: 2 }, "use 500 cm²/l, age 2 h", ""],
    [{ pushStops: 1 }, {}, "a fresh bath, push 0 stops", ""],
  ])("says what all its times are for, where a bath has %j", (bath, known, said, german) => {
    const differing = {
      ...day,
      baseline: { ...day.baseline, ...known },
      baths: [...day.baths, { temperatureC: 18, ...bath }],
    };
    const out = (...words: string[]): string =>
      ran(["chart", "d.json", ...words], { "d.json": differing }).out;
    expect(out().split("\n")[1]).toBe(`All times are for ${said}.`);
    expect(out("--wall")).toContain(`>All times are for ${said}.<`);
    expect(out("--lang", "de")).toContain(`Alle Zeiten gelten für ${german}`);
    // Where the baths differ in what the chart shows, there is nothing to say.
    expect(ran(["chart", "day.json"], files).out).not.toContain("All times");
  });
  it("is for the push of a day whose films are all pushed alike", () => {
    const pushed = { ...day, baths: day.baths.map((bath) => ({ ...bath, pushStops: "+1" })) };
    const out = ran(["chart", "d.json", "--temperature", "20"], { "d.json": pushed }).out;
    expect(out).toContain("All times are for a fresh bath, push 1 stop.");
    const { timeS } = roundEstimate(compensate(baseline, { pushStops: 1 }, day.laws));
    expect(out).toMatch(new RegExp(`20 °C +${formatTime(timeS)} `));
  });
  it("is refused for what is wrong with a bath, as time is", () => {
    const wrong = { "f.json": { ...day, baths: [{ temperatureC: "14 °F" }] } };
    const err = ran(["time", "f.json"], wrong);
    expect(err.code).toBe(2);
    for (const form of [[], ["--csv"], ["--wall"], ["--svg"]])
      expect(ran(["chart", "f.json", ...form], wrong)).toEqual(err);
    const list = { "f.json": { ...day, baths: [{}, { temperatureC: [20, 17] }] } };
    expect(ran(["chart", "f.json"], list).err).toBe(ran(["time", "f.json"], list).err);
  });
  it("writes text, a table or a page of the same chart", () => {
    const asked = [
      "chart",
      "day.json",
      "--temperature",
      "20..18",
      "--temperature",
      "16",
      "--temperature",
      "14",
    ];
    const three = ["chart", "day.json", "--temperature", "20", "--temperature", "18", "--temperature", "16"];
    expect(ran([...three, "--csv"], files).out).toBe(chartCsv(chart));
    expect(ran([...three, "--wall"], files).out).toBe(chartSvg(chart));
    expect(json(ran([...three, "--json"], files).out)[0].chart).toEqual(JSON.parse(JSON.stringify(chart)));
    const lines = ran(asked, files)
      .out.split("\n")
      .filter((line) => /^\d+ °C/.test(line));
    expect(lines.map((line) => line.slice(0, 2))).toEqual(["20", "19", "18", "16", "14"]);
  });
  it("heads a recipe's chart with its name", () => {
    expect(ran(["chart", "recipe.json"], files).out).toMatch(/^Hut concentrate, roll film\nKnown: /);
    expect(ran(["chart", "recipe.json", "--wall"], files).out).toContain(
      ">Hut concentrate, roll film</text>",
    );
    const nameless = { ...recipe, name: undefined };
    const out = ran(["chart", "n.json", "--dilution", "1+24"], { "n.json": nameless }).out;
    expect(out).toMatch(/^roll film in hut concentrate\n/);
    expect(out).toContain("1+24");
  });
  it("takes dilutions for a day, and needs none", () => {
    expect(ran(["chart", "day.json", "--dilution", "1+24"], files).out).toContain("1+24");
    const german = ["chart", "day.json", "--lang", "de", "--dilution", "unverdünnt"];
    expect(ran(german, files).out).toContain("Stammlösung");
    const bare = { baseline: { time: "9:00", temperatureC: 20 } };
    expect(ran(["chart", "b.json"], { "b.json": bare })).toMatchObject({ code: 0 });
  });
});

describe("chart --svg", () => {
  const svg = (...words: string[]): string => ran(["chart", ...words, "--svg"], files).out;
  const textOf = (drawn: string): readonly string[] =>
    [...drawn.matchAll(/<text[^>]*>([^<]*)/g)].map(([, text]) => text!);

  it("draws the picture of the package, with the rounded time of `time` above it", () => {
    const { timeS, lowS, highS } = roundEstimate(compensateRecipe(checked.recipe));
    const [time, low, high] = [timeS, lowS, highS].map((one) => formatTime(one));
    const drawn = svg("recipe.json");
    const heading = `Hut concentrate, roll film: ${time}, nine times in ten ${low} to ${high}`;
    expect(textOf(drawn)[0]).toBe(heading);
    const own = pictureSvg(recipePicture(checked.recipe, {}, { strip: true }), { standalone: true, heading });
    // The same drawing, but for its height and the lines below it.
    const lines = new Set(drawn.split("\n"));
    expect(own.split("\n").filter((line) => !lines.has(line))).toHaveLength(2);
    expect(ran(["time", "recipe.json"], files).out).toContain(
      `Develop ${time}, nine times in ten ${low} to ${high}.`,
    );
  });
  it("answers for the first bath of a day, or for the one that is named or numbered", () => {
    expect(textOf(svg("day.json"))[0]).toMatch(/^Morning: /);
    expect(textOf(svg("day.json", "--bath", "Evening"))[0]).toMatch(/^Evening: /);
    expect(svg("day.json", "--bath", "2")).toBe(svg("day.json", "--bath", "Evening"));
    expect(svg("day.json", "--bath", "2", "--temperature", "17")).toContain(">today 17 °C<");
    expect(textOf(svg("day.json", "--temperature", "17"))[0]).toMatch(/^As asked, all else as known: /);
    expect(svg("day.json", "--temperature", "17")).not.toContain("1+14 instead of");
    const bare = { baseline: { time: "9:00", temperatureC: 20 } };
    const out = ran(["chart", "b.json", "--svg"], { "b.json": bare }).out;
    expect(textOf(out)[0]).toBe("As known: 9:00, nine times in ten 8:25 to 9:35");
  });
  it("says why there is no time, and what is unwise", () => {
    const drawn = svg("recipe.json", "--temperature", "11");
    expect(textOf(drawn)[0]).toBe("Hut concentrate, roll film: No time.");
    expect(drawn).toContain("Stop: Hydroquinone practically stops");
    expect(ran(["chart", "recipe.json", "--temperature", "11", "--svg", "--strict"], files).code).toBe(1);
  });
  it("refuses a bath that is not there", () => {
    const missing = ran(["chart", "day.json", "--svg", "--bath", "Noon"], files);
    expect(missing).toMatchObject({ code: 2, out: "" });
    expect(missing.err).toContain('it has no bath "Noon"; it has "Morning", "Evening".');
    expect(ran(["chart", "recipe.json", "--svg", "--bath", "1"], files).err).toContain(
      "has no list of baths",
    );
    const bare = { baseline: { time: "9:00", temperatureC: 20 } };
    expect(ran(["chart", "b.json", "--svg", "--bath", "1"], { "b.json": bare }).err).toContain("it has none");
  });
});

describe("nonsense files", () => {
  const bare = { time: "9:00", temperatureC: 20 };
  const node = (code: string): Error => Object.assign(new Error("no"), { code });
  it.each([
    ["nothing", "", /^f\.json: the file is empty\./],
    ["blanks", " \n ", /^f\.json: the file is empty\./],
    ["a folder", node("EISDIR"), /^f\.json: this is a folder, not a file\./],
    ["no leave to read", node("EACCES"), /not allowed/],
    ["a disk that fails", node("EIO"), /it cannot be read: no\./],
    ["no JSON", "{oops", /^f\.json:1:2: this is not valid JSON: a name in double quotes is expected here\./],
    ["a trailing comma", '{"baths": [1,\n]}', /^f\.json:2:1: .*no comma before \]/],
    [
      "a name that comes twice",
      '{"baseline": {"time": "9:00", "temperatureC": 20},\n"baths": [{"ageH": 1, "ageH": 20}]}',
      /^f\.json:2:23: \/baths\/0\/ageH stands twice: only one "ageH" may be here\./,
    ],
    ["null", "null", /must be an object/],
    ["a number", "7", /must be an object/],
    ["an empty object", "{}", /\/schemaVersion is missing.*3 more/],
    ["a newer recipe", { ...recipe, schemaVersion: 9 }, /\/schemaVersion must be at most 2, the newest/],
    ["no known time", { baths: [{}] }, /\/baseline the known time with its conditions is missing\./],
    ["a baseline that is a list", { baseline: [], baths: [{}] }, /\/baseline .* must be an object\./],
    [
      "no time",
      { baseline: { temperatureC: 20 }, baths: [{}] },
      /\/baseline\/time the known time is missing\./,
    ],
    [
      "a bare number",
      { baseline: { ...bare, time: "9" }, baths: [{}] },
      /\/baseline\/time must be "9 min" or "9 s"/,
    ],
    ["no temperature", { baseline: { time: "9:00" }, baths: [{}] }, /\/baseline\/temperatureC/],
    ["baths that are no list", { baseline: bare, baths: {} }, /\/baths the list of baths must be a list\./],
    [
      "an empty list of baths",
      { baseline: bare, baths: [] },
      /\/baths the list of baths must hold at least one bath\./,
    ],
    ["a wrong bath", { baseline: bare, baths: [null] }, /\/baths\/0 a bath is missing\./],
    ["a wrong name", { baseline: bare, baths: [{ name: 7 }] }, /\/baths\/0\/name this must be text\./],
    [
      "a hot bath",
      { baseline: bare, baths: [{ temperatureC: 300 }] },
      /\/baths\/0\/temperatureC must be from 0 to 100 °C/,
    ],
    ["wrong laws", { baseline: bare, laws: { age: { kind: "lief" } }, baths: [{}] }, /\/laws\/age\/kind/],
    [
      "a row that is not there",
      { baseline: bare, baths: [{}], table: { rows: [], fitRows: [0] } },
      /\/table\/fitRows\/0 there is no row 0/,
    ],
    [
      "a table of one row",
      { baseline: bare, baths: [{}], table: { rows: [{ temperature: 20, time: "9:00" }], fitRows: [0] } },
      /\/table\/fitRows must hold at least 2/,
    ],
    [
      "a row in no unit of time",
      {
        baseline: bare,
        baths: [{}],
        table: { unit: "F", rows: [{ temperature: 68, time: "9" }], fitRows: [] },
      },
      /\/table\/rows\/0\/time must be "9 min" or "9 s"/,
    ],
    [
      "a brew without its temperature",
      { baseline: bare, baths: [{}], brew: { reference: {} } },
      /\/brew\/temperatureC the temperature is missing\./,
    ],
  ])("%s", (_, content, message) => {
    const { code, out, err } = ran(["time", "f.json"], { "f.json": content });
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(err).toMatch(message);
    expect(err.trim().split("\n")).toHaveLength(1);
  });
  it("answers the others, and says in the data which failed", () => {
    const { code, out, err } = ran(["time", "none.json", "day.json", "--json"], files);
    expect(code).toBe(2);
    expect(err).toBe("none.json: there is no such file.\n");
    const [failed, answered] = json(out);
    expect(failed).toEqual({ file: "none.json", error: { message: "there is no such file." } });
    expect(answered.answers).toHaveLength(2);
  });
  it("are not taken for bugs: a bug is not hidden", () => {
    const broken = new Proxy([], {
      get: () => {
        throw new Error("a bug");
      },
    });
    expect(() => ran(broken as unknown as string[])).toThrow("a bug");
  });
});

describe("the command line", () => {
  it.each([
    ["nothing", [], /Say what to do: time, check, plan, chart, brew, or --help\./],
    ["another command", ["develop"], /"develop" is no command/],
    ["no file", ["time"], /Name a file/],
    ["a wrong option", ["time", "recipe.json", "--frob"], /--frob is no option/],
    ["an option of another command", ["time", "recipe.json", "--svg"], /--svg is for chart, not for time\./],
    ["a value too many", ["time", "recipe.json", "--json=yes"], /--json takes no value\./],
    ["a value too few", ["time", "recipe.json", "--temperature"], /--temperature needs a value/],
    [
      "a language that is not known",
      ["time", "recipe.json", "--lang", "fr"],
      /--lang "fr" is not known; known are en, de\./,
    ],
    ["two forms", ["chart", "recipe.json", "--csv", "--svg"], /--csv and --svg cannot be had at once\./],
    ["one page of two files", ["chart", "recipe.json", "day.json", "--svg"], /--svg takes one file/],
    [
      "a bath without a picture",
      ["chart", "day.json", "--bath", "1"],
      /--bath is for plan, and for chart with --svg/,
    ],
    [
      "two temperatures for one picture",
      ["chart", "day.json", "--svg", "--temperature", "12..14"],
      /but not with --svg/,
    ],
    [
      "a wrong temperature",
      ["time", "recipe.json", "--temperature", "warm"],
      /--temperature must be a temperature/,
    ],
    [
      "a dilution that is ambiguous",
      ["time", "recipe.json", "--dilution", "1:9"],
      /--dilution must be "1\+9" \(1 part and 9 of water\) or "1\+8" \(1 part of 9 in all\), got "1:9"/,
    ],
    [
      "two temperatures",
      ["time", "recipe.json", "--temperature", "14", "--temperature", "16"],
      /are given once/,
    ],
    ["a range for one time", ["time", "recipe.json", "--temperature", "14..16"], /takes one temperature/],
    ["a range of three", ["chart", "recipe.json", "--temperature", "14..16..18"], /two ends/],
    ["an endless range", ["chart", "recipe.json", "--temperature", "0..500"], /more than 100 steps/],
    // Nothing in the file is wrong.
    ...(["time", "plan", "chart"] as const).map((command): [string, string[], RegExp] => [
      `°C for °F, asked of ${command}`,
      [command, command === "plan" ? "recipe.json" : "day.json", "--temperature", "24", "--unit", "F"],
      /: --temperature 24 °F is below 32 °F: did you mean 24 °C\?\n$/,
    ]),
    [
      "°C for °F in a range",
      ["chart", "recipe.json", "--temperature", "12..24", "--unit", "F"],
      /: --temperature 12 °F is below 32 °F: did you mean 12 °C\?\n$/,
    ],
    [
      "°F for °C",
      ["time", "day.json", "--temperature", "150"],
      /: --temperature 150 °C is above 100 °C: did you mean 150 °F\?\n$/,
    ],
    ["ice", ["time", "day.json", "--temperature=-5C"], /: --temperature -5 °C is below 0 °C\.\n$/],
    ["steam", ["time", "day.json", "--temperature", "250F"], /: --temperature 250 °F is above 212 °F\.\n$/],
    [
      "a volume without its unit",
      ["plan", "recipe.json", "--volume", "500"],
      /--volume must be "500 ml" or "500 l", got "500"/,
    ],
  ])("refuses %s in one sentence", (_, words, message) => {
    const { code, out, err } = ran(words, files);
    expect([code, out]).toEqual([3, ""]);
    expect(err).toMatch(message);
    expect(err.trim().split("\n")).toHaveLength(1);
  });
  it("has help and a version, and English", () => {
    expect(ran(["--help"])).toMatchObject({ code: 0, err: "" });
    expect(ran(["time", "-h"]).out).toContain("--strict");
    expect(ran(["--version"]).out).toBe("0.0.0\n");
    expect(ran(["time", "-", "--lang", "en"], { "-": recipe }).code).toBe(0);
  });
  it("says how far it is when work is long and somebody watches, and not otherwise", () => {
    const three = ["time", "recipe.json", "day.json", "recipe.json"];
    expect(ran(three, files, { watched: true, stepMs: 800 }).err).toBe("2 of 3 files\n");
    expect(ran(three, files, { watched: true, stepMs: 1 }).err).toBe("");
    expect(ran(three, files, { stepMs: 800 }).err).toBe("");
  });
});

describe("--lang de", () => {
  const day = {
    baseline: { time: "9:00", temperatureC: 20, dilution: "1+9" },
    baths: [{ name: "Abend", temperatureC: 14, dilution: "1+14" }],
  };
  it("tells times, causes and cautions in German", () => {
    const { code, out } = ran(["time", "-", "--lang", "de"], { "-": day });
    expect(code).toBe(0);
    expect(out).toMatch(/^Bekannt: 9:00 bei 20 °C, 1\+9\.$/m);
    expect(out).toMatch(/^ {2}\d+:\d\d entwickeln, in neun von zehn Fällen \d+:\d\d bis \d+:\d\d\.$/m);
    expect(out).toMatch(/^ {4}Temperatur, von 20 °C auf 14 °C: \d+ % länger, ± \d+ %/m);
    expect(out).toMatch(/^ {4}Vorsicht: Unter den üblichen 18 bis 24 °C/m);
    expect(out).not.toMatch(/\b(?:the|Develop|Take care|known)\b/);
  });
  it("says in both languages what to write for a comma in a number", () => {
    const files = { "c.json": '{ "baseline": { "temperatureC": 20,5 } }' };
    expect(ran(["check", "c.json"], files)).toMatchObject({ code: 2 });
    expect(ran(["check", "c.json"], files).out).toMatch(
      /^c\.json:1:36: this is not valid JSON: a number has a point, no comma: 20\.5\. A day /,
    );
    expect(ran(["check", "c.json", "--lang", "de"], files).out).toMatch(
      /^c\.json:1:36: das ist kein gültiges JSON: Zahlen haben einen Punkt, kein Komma: 20\.5\. Ein Tag /,
    );
  });
  it("names in German what the command line asks for", () => {
    const asked = ["-", "--temperature", "57F", "--lang", "de"];
    expect(ran(["time", ...asked], { "-": day }).out).toMatch(/^Wie gefragt$/m);
    expect(ran(["chart", ...asked, "--svg"], { "-": day }).out).toContain(">Wie gefragt: ");
    const bare = { ...day, baths: undefined };
    expect(ran(["chart", "-", "--svg", "--lang", "de"], { "-": bare }).out).toContain(">Wie bekannt: ");
  });
  it("names in German what has no name", () => {
    const nameless = { ...day, baths: [{ temperatureC: 18 }] };
    expect(ran(["time", "-", "--lang", "de"], { "-": nameless }).out).toMatch(/^Bad 1$/m);
    expect(ran(["time", "-"], { "-": nameless }).out).toMatch(/^Bath 1$/m);
    expect(ran(["chart", "-", "--svg", "--bath", "Bad 1", "--lang", "de"], { "-": nameless }).out).toContain(
      ">Bad 1: ",
    );
    const { developer, ...rest } = { ...recipe, name: undefined, material: { name: "Platte" } };
    const unnamed = { ...rest, developer: { ...developer, name: undefined } };
    const brewed = {
      ...unnamed,
      developer: {
        kind: "brew",
        brew: {
          volumeMl: 500,
          ingredients: [
            { ingredient: "soda-anhydrous", massG: 27 },
            { ingredient: "instant-coffee", massG: 20 },
          ],
        },
      },
    };
    expect(ran(["time", "-", "--lang", "de"], { "-": brewed }).out).toMatch(/^Platte in einem Ansatz$/m);
    expect(ran(["time", "-"], { "-": brewed }).out).toMatch(/^Platte in a brew$/m);
  });
  it("checks, plans and charts in German", () => {
    expect(ran(["check", "-", "--lang", "de"], { "-": day }).out).toMatch(
      /: Vorsicht: .*\n-: in Ordnung, \d Meldungen\.\n[^\n]+\n$/s,
    );
    expect(ran(["chart", "-", "--lang", "de"], { "-": day }).out).toMatch(
      /^Bekannt: .*In neun von zehn Fällen/s,
    );
    expect(ran(["plan", "-", "--lang", "de"], { "-": recipe }).out).toMatch(
      /^0:00 Entwickeln, .*^Bereitstellen: Entwickler/ms,
    );
  });
});

describe("--unit F", () => {
  const day = {
    baseline: { time: "8:00", temperatureC: 20, dilution: "1+9" },
    baths: [{ name: "Cold", temperatureC: 17 }],
  };
  const asked = (...words: string[]) => ran([...words, "--unit", "F"], { "-": day, "recipe.json": recipe });
  it("shows every temperature in °F and changes no time", () => {
    const { out } = asked("time", "-");
    expect(out).toMatch(/^Known: 8:00 at 68 °F, 1\+9\.$/m);
    expect(out).toContain("temperature, 68 °F to 62.6 °F: ");
    expect(out).toContain("Below the usual 64.4 to 75.2 °F");
    expect(out).not.toContain("°C");
    const times = (text: string): readonly string[] => text.match(/\d+:\d\d/g) ?? [];
    expect(times(out)).toEqual(times(ran(["time", "-"], { "-": day }).out));
  });
  it("leaves the fields of a file in °C, and says so", () => {
    const { answers } = json(ran(["time", "day.json", "--unit", "F", "--json"], files).out)[0];
    expect(answers).toEqual(json(ran(["time", "day.json", "--json"], files).out)[0].answers);
    expect(ran(["--help"]).out).toMatch(/--unit F .*--temperature read in °F; temperatureC stays in °C/);
  });
  it("reads bare temperatures in °F, and walks a chart by its degrees", () => {
    const bath = { name: "As asked", temperatureC: (64 - 32) / 1.8 };
    const same = ran(["time", "-"], { "-": { ...day, baths: [bath] } }).out;
    expect(asked("time", "-", "--temperature", "64").out).toContain(/Develop .*/.exec(same)![0]);
    const { out } = asked("chart", "-", "--temperature", "64..68");
    expect(out.match(/^6\d °F/gm)).toEqual(["64 °F", "65 °F", "66 °F", "67 °F", "68 °F"]);
  });
  it.each([
    ["check", "-"],
    ["plan", "recipe.json"],
    ["chart", "recipe.json"],
    ["chart", "recipe.json", "--wall", "--temperature", "64..70"],
    ["chart", "recipe.json", "--svg"],
  ])("of %s %s says no °C, in German too", (...words) => {
    for (const lang of ["en", "de"]) {
      const { code, out } = asked(...words, "--lang", lang);
      expect(code).toBe(0);
      expect(out).not.toMatch(/\d °C/);
    }
  });
  it("is refused where it is no unit", () => {
    const { code, err } = ran(["time", "-", "--unit", "K"], { "-": day });
    expect([code, err]).toEqual([3, 'darkroom-kinetics: --unit "K" is not known; known are C, F.\n']);
  });
});

describe("what is wrong, in German", () => {
  it.each([
    [
      { baseline: { time: "9:00", temperatureC: 20 }, baths: [{ temperatureC: 300 }] },
      /nötig ist ein Wert von 0 bis 100 °C/,
    ],
    [{ baseline: { time: "9", temperatureC: 20 }, baths: [] }, /nötig ist „9 min“ oder „9 s“/],
  ])("%j", (file, pattern) => {
    const { code, out, err } = ran(["check", "-", "--lang", "de"], { "-": file });
    expect(code).toBe(2);
    expect(out + err).toMatch(pattern);
  });
  it.each([
    [
      "nothing to do",
      ["--lang", "de"],
      /^darkroom-kinetics: "--lang" ist kein Befehl: time, .* oder --help\.$/,
    ],
    [
      "no file",
      ["time"],
      /: Es fehlt die Datei: darkroom-kinetics time DATEI, oder - für die Standardeingabe\.$/,
    ],
    ["a wrong option", ["time", "-", "--frob"], /: --frob ist keine Option dieses Befehls/],
    ["an option of another command", ["time", "-", "--svg"], /: --svg gehört zu chart, nicht zu time\.$/],
    ["a value too many", ["time", "-", "--json=yes"], /: --json hat keinen Wert\.$/],
    ["a value too few", ["time", "-", "--volume"], /: --volume gehört zu plan und brew, nicht zu time\.$/],
    ["a unit", ["time", "-", "--unit", "K"], /: --unit "K" ist nicht bekannt; bekannt sind C, F\.$/],
    ["two forms", ["chart", "-", "--csv", "--svg"], /: --csv und --svg gehen nicht zugleich\.$/],
    ["two files", ["chart", "-", "a.json", "--svg"], /: --svg nimmt nur eine Datei auf einmal\.$/],
    [
      "a bath without a picture",
      ["chart", "-", "--bath", "1"],
      /: --bath gehört zu plan, und zu chart mit --svg\.$/,
    ],
    ["two times", ["time", "-", "--dilution", "1+1", "--dilution", "1+2"], / stehen nur einmal/],
    ["a range", ["time", "-", "--temperature", "14..16"], /: --temperature nimmt eine Temperatur/],
    [
      "an endless range",
      ["chart", "-", "--temperature", "0..500"],
      /: --temperature 0\.\.500 hat mehr als 100 Schritte\.$/,
    ],
    [
      "°C for °F",
      ["time", "-", "--temperature", "24", "--unit", "F"],
      /: --temperature 24 °F liegt unter 32 °F: sind 24 °C gemeint\?$/,
    ],
    ["steam", ["time", "-", "--temperature", "250"], /: --temperature 250 °C liegt über 100 °C\.$/],
    [
      "a wrong temperature",
      ["time", "-", "--temperature", "warm"],
      /: --temperature nötig ist eine Temperatur/,
    ],
    [
      "a vessel",
      ["plan", "-", "--vessel", "bucket"],
      /: --vessel "bucket" ist nicht bekannt; bekannt sind tank, /,
    ],
  ])("on the command line: %s", (_, words, pattern) => {
    const { code, err } = ran([...words, "--lang=de"], { "-": recipe });
    expect(code).toBe(3);
    expect(err.trim()).toMatch(pattern);
  });
  it.each([
    ["an empty file", "time", " ", "die Datei ist leer."],
    ["broken JSON", "time", '{"baseline": }', "das ist kein gültiges JSON: Erwartet wird hier ein Wert."],
    [
      "a bad comma",
      "time",
      '{"a": [1,]}',
      "das ist kein gültiges JSON: Erwartet wird hier kein Komma vor ].",
    ],
    [
      "a plan of a day",
      "plan",
      JSON.stringify(day),
      "an diesem Tag gibt es nichts zu planen: nötig ist ein Teil namens evening mit Platten, Gefäß und Volumen. " +
        "Ein einzelner Film wird nach einem Rezept geplant. Beides steht in docs/command.md.",
    ],
    ["no known time", "time", '{"baths": [], "baseline": {}}', "/baseline/time die bekannte Zeit fehlt."],
    [
      "a wrong list",
      "time",
      '{"baths": [7], "baseline": {"time": "9:00", "temperatureC": 20}}',
      "/baths/0 ein Bad: nötig ist ein Objekt.",
    ],
  ])("in a file: %s", (_, command, file, sentence) => {
    const { code, err } = ran([command, "-", "--lang", "de"], { "-": file });
    expect(code).toBe(2);
    expect(err.trim().endsWith(`: ${sentence}`), err).toBe(true);
  });
  it("where there is no file", () => {
    expect(ran(["check", "none.json", "--lang", "de"], {}).out).toContain("diese Datei gibt es nicht.");
    expect(ran(["check", "none.json"], {}).out).toContain("there is no such file.");
  });
});
