/* Notebooks of several films and developers, and what a bare "Dev" heads. All rows are invented. */
import { describe, expect, it } from "vitest";
import { learn, predict, readRunNotes, startKnowledge, tableRecords } from "../../src/index.js";
import { de } from "../../src/texts/de.js";
import { describeCautions } from "../../src/index.js";
import { anyOf } from "../helpers.js";

const base = { Time: "8:30", Temp: "20 °C", Outcome: "good" };

/** Twelve rows of each of two films, the second much faster in the bath. */
const two = Array.from({ length: 24 }, (_, i) => ({
  ...base,
  id: String(i),
  Film: i % 2 === 0 ? "slow" : "fast",
  Time: i % 2 === 0 ? "13:00" : "9:00",
}));

describe("a notebook of two films", () => {
  it("is read as one with a caution that names them, in English and German", () => {
    const { runs, unread, cautions, leftAside } = readRunNotes(two);
    expect(runs).toHaveLength(24);
    expect(runs[0]?.note).toBe("Film: slow");
    expect({ unread, leftAside }).toEqual({ unread: [], leftAside: [] });
    expect(cautions).toEqual([
      {
        code: "mixed-notes",
        severity: "warn",
        message: "Film has 2 values: slow (12 rows), fast (12). They are read as one.",
        path: "/Film",
        quantity: "count",
        actual: 2,
        data: {
          heading: "Film",
          values: [
            { value: "slow", runs: 12 },
            { value: "fast", runs: 12 },
          ],
          unnamed: 0,
        },
      },
    ]);
    expect(describeCautions(cautions, de.cautions)).toEqual([
      "Vorsicht: Film hat 2 Werte: slow (12 Zeilen), fast (12). Alle werden zusammen gelesen. [/Film]",
    ]);
  });
  it("gives the time of the film that is asked for, and leaves the others aside", () => {
    const start = startKnowledge({ timeS: 660, temperatureC: 20 });
    const { runs, leftAside, cautions } = readRunNotes(two, { only: { material: " FAST" } });
    expect(runs.map(({ timeS }) => timeS)).toEqual(Array.from({ length: 12 }, () => 540));
    expect(leftAside).toEqual([1, 3, 5, 7, 9, 11, 13, 15, 17, 19, 21, 23]);
    expect(cautions).toEqual([]);
    const { lowS, timeS, highS } = predict(learn(start, runs), {});
    expect(lowS).toBeLessThan(540);
    expect(highS).toBeGreaterThan(540);
    expect(highS).toBeLessThan(780);
    expect(timeS).toBeLessThan(600);
    // All of them as one are neither film, and every answer says that they scatter.
    const both = predict(learn(start, readRunNotes(two).runs), {});
    expect(both.cautions.map(({ code }) => code)).toContain("scatter");
  });
});

describe("names in a notebook", () => {
  const named = (rows: readonly object[], options = {}) =>
    readRunNotes(
      rows.map((row, i) => ({ ...base, id: String(i), ...row })),
      options,
    );
  it("are one whatever their case and blanks", () => {
    expect(named([{ Film: "Slow  film" }, { Film: " slow film" }, { film: "SLOW FILM" }]).cautions).toEqual(
      [],
    );
  });
  it.each([
    ["Film", "material"],
    ["Plate", "material"],
    ["Paper", "material"],
    ["Material", "material"],
    ["Emulsion", "material"],
    ["Film type", "material"],
    ["Papier", "material"],
    ["Developer", "developer"],
    ["Film developer", "developer"],
    ["Developer name", "developer"],
    ["Entwickler", "developer"],
  ] as const)("are those below %s", (heading, field) => {
    const rows = [{ [heading]: "one" }, { [heading]: "two" }];
    const { runs, unread, cautions } = named(rows);
    expect(unread).toEqual([]);
    expect(runs.map(({ note }) => note)).toEqual([`${heading}: one`, `${heading}: two`]);
    expect(cautions).toMatchObject([{ code: "mixed-notes", path: `/${heading}`, actual: 2 }]);
    expect(named(rows, { only: { [field]: "two" } })).toMatchObject({ leftAside: [1], cautions: [] });
  });
  it.each(["Film speed", "Film no", "Paper grade"])("are none below %s", (heading) => {
    const { unread, cautions } = named([{ [heading]: "1" }, { [heading]: "2" }]);
    expect(unread).toMatchObject([{ heading, whole: true }]);
    expect(cautions).toEqual([]);
  });
  it("are told where some rows have none, and counted in the rows that were read alone", () => {
    const { cautions } = named([{ Film: "slow" }, {}, { Film: "slow" }, { Film: "fast", Temp: "cold" }]);
    expect(cautions).toMatchObject([
      {
        message: "Film has 1 value: slow (2 rows); 1 row without one. They are read as one.",
        data: { unnamed: 1 },
      },
    ]);
  });
  it("are listed to five, those of the most rows first", () => {
    const films = ["a", "b", "c", "d", "e", "f", "g", "g"];
    const [caution] = named(films.map((Film) => ({ Film }))).cautions;
    expect(caution).toMatchObject({
      actual: 7,
      message: "Film has 7 values: g (2 rows), a (1), b (1), c (1), d (1) and 2 more. They are read as one.",
    });
  });
  it("leave a row aside with all that is wrong with it, and a row without a name", () => {
    const rows = [{ Film: "slow" }, { Film: "fast", Temp: "cold", Lamp: "red" }, {}];
    const { runs, rows: read, rejected, unread, leftAside } = named(rows, { only: { material: "slow" } });
    expect(read).toEqual([1]);
    expect(runs).toHaveLength(1);
    expect({ rejected, unread, leftAside }).toEqual({ rejected: [], unread: [], leftAside: [2, 3] });
  });
  it("are asked for by film and developer together", () => {
    const rows = ["1", "2"].flatMap((Film) => ["a", "b"].map((Developer) => ({ Film, Developer })));
    expect(named(rows, { only: { material: "2", developer: "A" } }).leftAside).toEqual([1, 2, 4]);
  });
  it("are refused where they are no text, or are asked of another column", () => {
    expect(() => named([], { only: { film: "slow" } })).toThrow(/readRunNotes: options.only.film must be/);
    expect(() => named([], { only: { material: 3 } })).toThrow(TypeError);
    expect(() => named([], { only: anyOf("slow") })).toThrow(TypeError);
  });
});

describe("a bare Dev", () => {
  const row = { Temp: "20 °C", Outcome: "good" };
  it("is the developer beside a time", () => {
    const { runs, rejected, unread } = readRunNotes([{ Film: "slow film", Dev: "brew 3", ...base }]);
    expect({ rejected, unread }).toEqual({ rejected: [], unread: [] });
    expect(runs).toMatchObject([{ timeS: 510, note: "Film: slow film; Dev: brew 3" }]);
  });
  it.each(["Dev", "dev.", "Development", "Entwicklung", "Entw."])(
    "is the time where none else is: %s",
    (Dev) => {
      expect(readRunNotes([{ ...row, [Dev]: "8:30" }]).runs).toMatchObject([{ timeS: 510 }]);
    },
  );
  it("is the developer where none of its cells is a time, and then the time is missing", () => {
    const { rejected } = readRunNotes([{ ...row, Dev: "brew 3" }]);
    expect(rejected.map(({ reason }) => reason)).toEqual(["time is missing"]);
  });
  it("is asked for its unit where its cells are bare figures", () => {
    expect(readRunNotes([{ ...row, Dev: "510" }]).rejected[0]?.reason).toMatch(/^Dev must be "510 min" or/);
  });
  it("says the time too where every cell of it is one, and the row is refused", () => {
    expect(readRunNotes([{ ...base, Dev: "9:00" }]).rejected[0]?.reason).toBe(
      "Time must be one column, not Time and Dev",
    );
  });
  it("may be the number of a brew beside a time", () => {
    expect(readRunNotes([{ ...base, Dev: 3 }]).runs).toMatchObject([{ timeS: 510, note: "Dev: 3" }]);
  });
});

describe("a heading that is not known", () => {
  it.each(["Weather", "Wetter", "Grade", "Camera", "Lens", "Lamp", "Stop", "Fixer", "Tank"])(
    "gets no hint of another: %s",
    (heading) => {
      const [one] = readRunNotes([{ ...base, [heading]: "x" }]).unread;
      expect(one?.problem.expected).not.toHaveProperty("hint");
    },
  );
  it.each([
    ["Dilutoin", "dilution"],
    ["Temprature", "temperature"],
    ["Verdünung", "verdunnung"],
    ["Dens", "density"],
  ])("gets the nearest: %s", (heading, hint) => {
    expect(readRunNotes([{ ...base, [heading]: "x" }]).unread[0]?.problem.expected).toMatchObject({ hint });
  });
});

describe("what a spreadsheet or a remark leaves open", () => {
  it("asks whether a saved clock is in minutes or in hours", () => {
    const read = (Time: string) => readRunNotes([{ ...base, Time }]);
    expect(read("7:30:00").rejected[0]?.problems).toMatchObject([
      { code: "ambiguous", path: "/Time", expected: { readings: ["7:30", "7 h 30 min"] } },
    ]);
    expect(read("07:30:00").rejected).toHaveLength(1);
    expect(read("7 h 30 min").runs).toMatchObject([{ timeS: 27_000 }]);
    expect(read("0:07:30").runs).toMatchObject([{ timeS: 450 }]);
    expect(read("1:02:30").runs).toMatchObject([{ timeS: 3750 }]);
    const told = readRunNotes(tableRecords("Time (h:mm:ss);Temp;Outcome\n1:30:00;20;good"));
    expect(told.runs).toMatchObject([{ timeS: 5400 }]);
  });
  it("asks which of two judgements in a remark is meant", () => {
    const noted = (Note: string) => readRunNotes([{ Time: "8:30", Temp: "20 °C", Note }]);
    expect(noted("good, a bit thin").rejected[0]?.problems).toMatchObject([
      { code: "ambiguous", path: "/Note", expected: { readings: ["good", "a bit thin"] } },
    ]);
    expect(noted("good, perfect, window open").runs).toMatchObject([{ outcome: { kind: "good" } }]);
  });
});

describe("a person and a thermometer", () => {
  // Invented: one notebook, two spellings of each name.
  const row = (by: string, thermometer: string): object => ({
    Time: `${by.length}:00`,
    Temp: "20 °C",
    Outcome: "good",
    By: by,
    Thermometer: thermometer,
  });

  it("are spelt as they were first, where case or spaces alone differ", () => {
    const { runs } = readRunNotes([
      row("Hut  keeper", "Red"),
      row("hut keeper", "red"),
      row("guest", "RED 2"),
    ]);
    expect(runs.map(({ by, thermometer }) => [by, thermometer])).toEqual([
      ["Hut  keeper", "Red"],
      ["Hut  keeper", "Red"],
      ["guest", "RED 2"],
    ]);
  });
  it("keep their own spelling, though one name may be both", () => {
    const { runs } = readRunNotes([row("Red", "old"), row("guests", "red")]);
    expect(runs.map(({ by, thermometer }) => [by, thermometer])).toEqual([
      ["Red", "old"],
      ["guests", "red"],
    ]);
  });
});
