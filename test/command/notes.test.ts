/* The command with a table of notes: it learns as the package does, and tells what it could not read. */
import { describe, expect, it } from "vitest";
import {
  compensateRecipe,
  learn,
  learnRecipe,
  planRecipe,
  predict,
  readRunNotes,
  startKnowledge,
  tableRecords,
  timeChart,
  type Compensation,
  type Recipe,
} from "../../src/index.js";
import { day, ran, recipe } from "./machine.js";

// Invented notes of a hut.
const notes = `Date;Time;Temp;Dilution;Outcome;Film;Camera
2 May 2026;9:30;20 °C;1+9;good;roll film;box
3 May 2026;12:30;17 °C;1+9;good;roll film;box
3 May 2026;12:30;17 °C;1+9;+1;roll film;
4 May 2026;20:00;17 °C;1+9;good;plate;
`;
const files = { "recipe.json": recipe, "day.json": day, "notes.csv": notes };
const { runs } = readRunNotes(tableRecords(notes));
const rolls = readRunNotes(tableRecords(notes), { only: { material: "roll film" } }).runs;

interface Printed {
  readonly answers: readonly Compensation[];
  readonly notes: {
    readonly runs: readonly unknown[];
    readonly rejected: readonly { readonly row: number }[];
  };
  readonly plan: unknown;
  readonly chart: unknown;
}
const printed = (words: readonly string[]): Printed =>
  (JSON.parse(ran([...words, "--json"], files).out) as { files: readonly [Printed] }).files[0];
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe("a recipe with notes", () => {
  it("has the time of the recipe that learned", () => {
    const learned = compensateRecipe(learnRecipe(recipe, runs));
    const [answer] = printed(["time", "recipe.json", "--notes", "notes.csv"]).answers;
    expect(answer).toMatchObject(plain(learned) as object);
    expect(learned.timeS).not.toBe(compensateRecipe(recipe as Recipe).timeS);
  });
  it("says so where no row is of the film that is asked for", () => {
    const misspelt = (...more: string[]): string =>
      ran(["time", "recipe.json", "--notes", "notes.csv", "--material", "rollfilm", ...more], files).out;
    expect(misspelt()).toContain("Take care: No row is of this material and developer. 4 are of another.");
    expect(misspelt("--lang", "de")).toContain("Vorsicht: Keine Zeile ist von diesem Material");
  });
  it("learns from the rows of one film", () => {
    const { answers, notes: read } = printed(
      "time recipe.json --notes notes.csv --material".split(" ").concat("Roll Film"),
    );
    expect(answers[0]).toMatchObject(plain(compensateRecipe(learnRecipe(recipe as Recipe, rolls))) as object);
    expect(read.runs).toEqual(plain(rolls));
    expect(read.rejected.map(({ row }) => row)).toEqual([3]);
  });
  it("is planned with what was learned", () => {
    const plan = planRecipe(learnRecipe(recipe, runs), { vessel: "tank", rounded: true });
    expect(printed(["plan", "recipe.json", "--notes", "notes.csv"]).plan).toEqual(plain(plan));
  });
});

describe("a day with notes", () => {
  const { time: _time, note: _note, ...known } = day.baseline;
  // A known time is good to 4 % (sd), as every answer takes it.
  const start = startKnowledge({ ...known, timeS: 540 }, { baseLogSd: 0.04, laws: day.laws });
  const learned = learn(start, runs);
  const wanted = day.baths.map(({ name: _name, ...conditions }) => predict(learned, conditions));

  it("has the times that the learned knowledge predicts", () => {
    const { answers } = printed(["time", "day.json", "--notes", "notes.csv"]);
    expect(answers).toMatchObject(plain(wanted) as object[]);
  });
  it("is charted with what was learned, under the known time of the file, as time says it", () => {
    const axes = { temperaturesC: [20, 16], dilutions: ["1+9"] };
    const chart = timeChart({ baseline: learned.baseline, knowledge: learned, ...axes });
    const words = "chart day.json --notes notes.csv --temperature 20 --temperature 16 --dilution 1+9";
    const ofFile = { ...chart, known: { ...chart.known, timeS: 540 } };
    expect(printed(words.split(" ")).chart).toEqual(plain(ofFile));
    for (const asked of ["time day.json", "chart day.json", "chart recipe.json"])
      expect(ran([...asked.split(" "), "--notes", "notes.csv"], files).out).toContain(
        "\nKnown: 9:00 at 20 °C",
      );
  });
  it("without baths has the known time, which the runs have moved", () => {
    const { baths: _baths, ...bare } = day;
    const { out } = ran(["time", "bare.json", "--notes", "notes.csv"], { ...files, "bare.json": bare });
    expect(out).toMatch(/\nAs known\n {2}Develop (?!9:00)/);
  });
  it("says its own spread of the known time", () => {
    const sure = { ...day, baths: [{ temperatureC: 20 }] };
    const unsure = { ...sure, baseline: { ...day.baseline, logSd: 0.2 } };
    const of = (file: string): Compensation | undefined =>
      (
        JSON.parse(
          ran(["time", file, "--notes", "notes.csv", "--json"], {
            ...files,
            "sure.json": sure,
            "unsure.json": unsure,
          }).out,
        ) as { files: readonly [Printed] }
      ).files[0].answers[0];
    const width = (one: Compensation | undefined): number => Math.log(one!.highS / one!.lowS);
    expect(width(of("unsure.json"))).toBeGreaterThan(1.1 * width(of("sure.json")));
  });
});

describe("what is told of the notes", () => {
  it("stands above the answer: rows and columns that were not read, with what is wrong", () => {
    const { out, code } = ran(["time", "day.json", "--notes", "notes.csv"], files);
    expect(code).toBe(0);
    expect(out.split("\n").slice(0, 6)).toEqual([
      "notes.csv: 3 runs to learn from.",
      "  Take care: Film has 2 values: roll film (2 rows), plate (1). They are read as one.",
      "  Not read, rows counted below the headings:",
      '    row 3: Outcome: must be "over 1" if it came out too dense, or "under 1" if it needed more, got "+1"',
      '  Columns that are not known: "Camera".',
      "",
    ]);
  });
  it("is said in German", () => {
    const { out } = ran(["time", "day.json", "--notes", "notes.csv", "--lang", "de"], files);
    expect(out).toMatch(/^notes\.csv: gelernt wird aus 3 Entwicklungen\.\n/);
    expect(out).toContain("Nicht gelesen, Zeilen unter den Überschriften gezählt:\n    Zeile 3: Outcome: ");
  });
  it("stands beside what is for a program or a printer", () => {
    const { out, err } = ran(["chart", "day.json", "--csv", "--notes", "notes.csv"], files);
    expect(out).toMatch(/^dilution,temperatureC/);
    expect(err).toMatch(/^notes\.csv: 3 runs to learn from\.\n/);
  });
  it("is unwise where a row was not read", () => {
    const tame = { ...day, baths: [{ name: "Noon", temperatureC: 20 }] };
    const both = { ...files, "day.json": tame };
    const sound = notes.split("\n").slice(0, 3).join("\n");
    const code = (text: string): number =>
      ran(["time", "day.json", "--strict", "--notes", "notes.csv"], { ...both, "notes.csv": text }).code;
    expect(code(sound)).toBe(0);
    expect(code(`${sound}\n3 May 2026;12:30;17 °C;1+9;+1;roll film;`)).toBe(1);
  });
  it("names cells that are left out, rows of another film, and notes without a row", () => {
    const odd = "Time;Temp;Rolls;Outcome;Film\n9:30;20 °C;2;good;roll film\n9:30;20 °C;;good;plate\n";
    const words = ["time", "day.json", "--notes", "odd.csv", "--material", "plate"];
    expect(ran(words, { ...files, "odd.csv": odd }).out).toMatch(
      /^odd\.csv: one run to learn from\.\n {2}One row is of another material or developer\.\n/,
    );
    expect(ran(["time", "day.json", "--notes", "odd.csv"], { ...files, "odd.csv": odd }).out).toContain(
      "  Left out of the run, rows counted below the headings:\n    row 1: Rolls: ",
    );
    expect(ran(["time", "day.json", "--notes", "no.csv"], { ...files, "no.csv": "" }).out).toMatch(
      /^no\.csv: 0 runs to learn from\.\n\n/,
    );
  });
  it("tells rows together that lack the same, by the names of columns in each language", () => {
    const bare = "Zeit;Temperatur;Notiz\n9:30;20 °C;gut\n9:30;19 °C;kalt\n9:40;20 °C;\n;20 °C;gut\n";
    const lines = (...more: string[]): string =>
      ran(["time", "day.json", "--notes", "bare.csv", ...more], { ...files, "bare.csv": bare }).out;
    expect(lines()).toContain("\n    rows 2, 3: outcome: is missing\n    row 4: time: is missing\n");
    expect(lines("--lang", "de")).toContain(
      "\n    Zeilen 2, 3: Ergebnis: fehlt: hier muss ein Wert stehen\n    Zeile 4: Zeit: fehlt: ",
    );
  });
  it("names the rows that teach nothing because they may be in °F", () => {
    const warm =
      "Datum;Zeit;Temperatur (°C);Ergebnis\n3.5.2026;9:00;68;gut\n4.5.2026;9:00;odd;gut\n" +
      "5.5.2026;9:30;20;gut\n6.5.2026;9:10;68;gut\n7.5.2026;9:10;63;gut\n";
    const lines = (...more: string[]): string =>
      ran(["time", "day.json", "--notes", "warm.csv", ...more], { ...files, "warm.csv": warm }).out;
    expect(lines()).toContain(
      "\n  Read, but nothing is learned from them, rows counted below the headings:\n" +
        "    rows 1, 4: 68 °C: is it in °F? 68 °F is 20.0 °C.\n    row 5: 63 °C: ",
    );
    expect(lines("--lang", "de")).toContain("\n    Zeilen 1, 4: 68 °C: sind das °F? 68 °F sind 20,0 °C.\n");
  });
  it("does not count a run that failed, and names its row", () => {
    const odd = "Zeit;Temperatur;Ergebnis\n9:30;20;gut\n9:30;20;misslungen\n9:30;20;verschleiert\n";
    const lines = (...more: string[]): string =>
      ran(["time", "day.json", "--notes", "odd.csv", ...more], { ...files, "odd.csv": odd }).out;
    const below = "nothing is learned from them, rows counted below the headings:\n    row 2: it failed.\n";
    expect(lines()).toMatch(/^odd\.csv: one run to learn from\.\n/);
    expect(lines()).toContain(`${below}    row 3: it was fogged.\n`);
    expect(lines("--lang", "de")).toContain("\n    Zeile 2: misslungen.\n    Zeile 3: verschleiert.\n");
  });
  it("names a heading as it was written, whatever is in it", () => {
    const odd = "Zeit;Temperatur;Benutzt (cm2/l);Ergebnis\n9:30;20 °C;1.032;gut\n";
    expect(ran(["time", "day.json", "--notes", "odd.csv"], { ...files, "odd.csv": odd }).out).toContain(
      '\n    row 1: Benutzt (cm2/l): must be "1.0320 cm2/l" or "1032 cm2/l", got "1.032 cm2/l"\n',
    );
  });
  it("reads a table in Markdown below its title", () => {
    const diary =
      "# Kaffee, Mai\n\n| Zeit | Temperatur | Ergebnis |\n|---|---|---|\n| 9:30 | 20 °C | gut |\n";
    expect(ran(["time", "day.json", "--notes", "diary.md"], { ...files, "diary.md": diary }).out).toMatch(
      /^diary\.md: one run to learn from\.\n\n/,
    );
  });
  it.each(["Lamp;Lens\nred;50\ngreen;90\n", "A letter,\nand its end.\n"])(
    "says in one sentence that there is no table: %j",
    (text) => {
      const held = { ...files, "no.csv": text };
      const words = ["time", "day.json", "--notes", "no.csv"];
      const err = "no table with a time, a temperature and an outcome was found";
      expect(ran(words, held)).toEqual({ code: 2, out: "", err: `no.csv: ${err}.\n` });
      expect(ran([...words, "--material", "plate"], held).err).toBe(`no.csv: ${err}.\n`);
      expect(ran([...words, "--lang", "de"], held).err).toBe(
        "no.csv: keine Tabelle mit Zeit, Temperatur und Ergebnis gefunden.\n",
      );
    },
  );
  it.each([
    ["a file that is not there", "gone.csv", "gone.csv: there is no such file.\n"],
    [
      "runs that name what the known time lacks",
      "aged.csv",
      "aged.csv: /runs/0/dilution needs baseline.dilution: what was it for the known time?\n",
    ],
  ])("is a fault of its own file: %s", (_, file, err) => {
    const undiluted = { ...day, baseline: { time: "9:00", temperatureC: 20 } };
    const held = { "day.json": undiluted, "aged.csv": notes };
    expect(ran(["time", "day.json", "--notes", file], held)).toMatchObject({ code: 2, out: "", err });
  });
  it("needs the notes for a choice of rows", () => {
    expect(ran(["time", "day.json", "--material", "plate"], files)).toMatchObject({
      code: 3,
      err: "darkroom-kinetics: --material and --developer choose rows of --notes FILE.\n",
    });
  });
});
