/* Headings and cells as a spreadsheet has them, in English and German, and the list of what was not read. All rows are invented. */
import { describe, expect, it } from "vitest";
import { readRunNotes, tableRecords, type DevelopmentRun } from "../../src/index.js";

const base: Record<string, unknown> = { Time: "8:30", Temp: "20C", Outcome: "good" };

describe("a heading", () => {
  it.each<[Record<string, unknown>, Partial<DevelopmentRun>]>([
    [{ "Dil.": "1+9" }, { dilution: "1+9" }],
    [{ Dil: "1+9" }, { dilution: "1+9" }],
    [{ Agit: "every 30 s" }, { agitation: { everyS: 30 } }],
    [{ "Agit.": "every 30 s" }, { agitation: { everyS: 30 } }],
    [{ "Temp": "", "Bath temp": "18C" }, { temperatureC: 18 }],
    [{ "Temp": "", "Dev temp": "18C" }, { temperatureC: 18 }],
    [{ "Temp": "", "Dev. temp (°C)": "18" }, { temperatureC: 18 }],
    [{ "Temp": "", "Developer temperature [F]": "68" }, { temperatureC: 20 }],
    [{ Time: "", Minutes: "8.5" }, { timeS: 510 }],
    [{ "Time": "", "Dev minutes": "8.5" }, { timeS: 510 }],
    [{ Time: "", Seconds: 500 }, { timeS: 500 }],
    [{ "Time": "", "Time (mm:ss)": "8:20" }, { timeS: 500 }],
    [{ "Time": "", "Time (h:mm:ss)": "0:08:20" }, { timeS: 500 }],
    [{ "Time": "", "Development time [min:sec]": "8:20" }, { timeS: 500 }],
    [{ Outcome: "", Verdict: "thin" }, { outcome: { kind: "thin" } }],
    [{ "Rolls/l": 2 }, { usedCm2PerL: 1032.256 }],
    [{ "Bath age": "3 days" }, { ageH: 72 }],
    [
      { "Rolls": 1, "Volume (ml)": 500 },
      { usedCm2PerL: 1032.256, note: "Volume (ml): 500" },
    ],
    [
      { Used: "2 rolls", Volume: "1/2 l" },
      { usedCm2PerL: 2064.512, note: "Volume: 1/2 l" },
    ],
    [{ Temp: "", Temperatur: "18 °C" }, { temperatureC: 18 }],
    [{ Time: "", Zeit: "8 Min. 20 Sek." }, { timeS: 500 }],
    [{ Time: "", Entwicklungszeit: "8:20" }, { timeS: 500 }],
    [{ "Time": "", "Zeit (Minuten)": "8,5" }, { timeS: 510 }],
    [{ Verdünnung: "1+9" }, { dilution: "1+9" }],
    [{ Verdünnung: "Stammlösung" }, { dilution: "stock" }],
    [{ ["Verdu\u0308nnung"]: "1+9" }, { dilution: "1+9" }],
    [{ Verduennung: "1+9" }, { dilution: "1+9" }],
    [{ Bewegung: "alle 30 s" }, { agitation: { everyS: 30 } }],
    [{ Bewegung: "ständig" }, { agitation: "continuous" }],
    [{ Bewegung: "jede Minute" }, { agitation: { everyS: 60 } }],
    [{ Alter: "3 Tage" }, { ageH: 72 }],
    [{ "Alter (Std.)": "3" }, { ageH: 3 }],
    [{ Alter: "frisch" }, { ageH: 0 }],
    [{ Datum: "5.3.2024" }, { date: "2024-03-05" }],
    [{ Outcome: "", Ergebnis: "zu dünn" }, { outcome: { kind: "thin" } }],
    [{ Outcome: "", Urteil: "etwas zu dicht" }, { outcome: { kind: "dense" } }],
    [{ Bemerkung: "Leitungswasser" }, { note: "Leitungswasser" }],
    [{ Bemerkungen: "Leitungswasser" }, { note: "Leitungswasser" }],
    [{ Gedruckt: "ja" }, { printed: true }],
    [{ "Temp": "", "Temperatur in °C": "18" }, { temperatureC: 18 }],
    [{ "Temp": "", "Temperature in °C": "18" }, { temperatureC: 18 }],
    [{ "Temp": "", "Temperatur in Grad Celsius": "18" }, { temperatureC: 18 }],
    [{ "Temp": "", "Entwicklertemp.": "18 °C" }, { temperatureC: 18 }],
    [{ "Temp": "", "Bad-Temperatur": "18 °C" }, { temperatureC: 18 }],
    [{ "Time": "", "Zeit in min": "8,5" }, { timeS: 510 }],
    [{ "Time": "", "Time in min": "8.5" }, { timeS: 510 }],
    [{ "Time": "", "Time (in min)": "8.5" }, { timeS: 510 }],
    [{ "Time": "", "Zeit in mm:ss": "8:20" }, { timeS: 500 }],
    [{ "Time": "", "Entw.-Zeit": "8:20" }, { timeS: 500 }],
    [{ "Time": "", "Dev-time (s)": "500" }, { timeS: 500 }],
    [{ "Alter in Tagen": "3" }, { ageH: 72 }],
    [{ Outcome: "", Bewertung: "i.O." }, { outcome: { kind: "good" } }],
    [{ Outcome: "", Bewertung: "zu hell" }, { outcome: { kind: "thin" } }],
  ])("of %j is known", (cells, expected) => {
    const { runs, rejected, unread } = readRunNotes([{ ...base, ...cells }]);
    expect({ rejected, unread }).toEqual({ rejected: [], unread: [] });
    expect(runs).toEqual([{ timeS: 510, temperatureC: 20, outcome: { kind: "good" }, ...expected }]);
  });
  it.each<[Record<string, unknown>, Partial<DevelopmentRun>]>([
    [{ Agitation: "once a minute" }, { agitation: { everyS: 60 } }],
    [{ Agitation: "every minute" }, { agitation: { everyS: 60 } }],
    [{ Agitation: "5 s every 30 s" }, { agitation: { everyS: 30 } }],
    [{ Time: "9:00 min" }, { timeS: 540 }],
    [{ Temp: "17 1/2 C" }, { temperatureC: 17.5 }],
    // What is said roughly is read, and stays in the note as it was said.
    [{ Temp: "~20C" }, { temperatureC: 20, note: "Temp: ~20C" }],
    [{ Temp: "ca. 20 °C" }, { temperatureC: 20, note: "Temp: ca. 20 °C" }],
    [{ Time: "about 9 min" }, { timeS: 540, note: "Time: about 9 min" }],
  ])("above %j is read with its cell", (cells, expected) => {
    const { runs, unread } = readRunNotes([{ ...base, ...cells }]);
    expect(runs).toEqual([{ timeS: 510, temperatureC: 20, outcome: { kind: "good" }, ...expected }]);
    expect(unread).toEqual([]);
  });
  it("of a German page needs no English word", () => {
    const page = "Datum\tZeit\tTemperatur\tVerdünnung\tErgebnis\n5.3.2024\t8:30\t13,5 °C\t1+9\tgut";
    expect(readRunNotes(tableRecords(page))).toEqual({
      runs: [
        { date: "2024-03-05", timeS: 510, temperatureC: 13.5, dilution: "1+9", outcome: { kind: "good" } },
      ],
      rows: [1],
      rejected: [],
      unread: [],
      leftAside: [],
      cautions: [],
    });
  });
});

describe("a heading with more than a unit", () => {
  it.each(["Time in", "Time in bath", "Zeit in Fixierer", "Time-of-day"])("%j is no column", (heading) => {
    expect(readRunNotes([{ ...base, [heading]: "9:00" }])).toMatchObject({
      runs: [{ timeS: 510, note: `${heading}: 9:00` }],
      unread: [{ heading, whole: true }],
    });
  });
  it("is refused where a bracket holds it", () => {
    const { rejected } = readRunNotes([{ ...base, "Time": "", "Time (in drops)": "9" }]);
    expect(rejected[0]?.problems[0]).toMatchObject({ path: "/Time (in drops)" });
  });
});

describe("the list of what was not read", () => {
  it("names a heading once, with the columns that are known and the nearest of them", () => {
    const { runs, unread } = readRunNotes([
      { ...base, Lamp: "" },
      { ...base, Time: "9:00", Lamp: "red", Dilutoin: "1+9" },
      { ...base, Time: "10:00", Lamp: "green", Dilutoin: "1+14" },
    ]);
    expect(runs.map(({ note }) => note)).toEqual([
      undefined,
      "Lamp: red; Dilutoin: 1+9",
      "Lamp: green; Dilutoin: 1+14",
    ]);
    expect(unread).toEqual([
      {
        heading: "Lamp",
        column: 4,
        row: 2,
        text: "red",
        whole: true,
        reason: expect.stringMatching(
          /^heading must be a field that is read \(all are time, temperature, .*\), got "Lamp"$/,
        ),
        problem: expect.objectContaining({ code: "not-one-of", path: "/Lamp" }),
      },
      expect.objectContaining({
        heading: "Dilutoin",
        column: 5,
        row: 2,
        problem: expect.objectContaining({ expected: expect.objectContaining({ hint: "dilution" }) }),
      }),
    ]);
  });
  it.each<[string, Record<string, unknown>, readonly (readonly [heading: string, code: string])[]]>([
    ["a word in the place of a unit", { "Temp room": "25C" }, [["Temp room", "not-one-of"]]],
    [
      "a side column",
      { Printed: "maybe", sd: "small" },
      [
        ["Printed", "not-one-of"],
        ["sd", "unreadable"],
      ],
    ],
    ["an amount of film without the volume", { Used: "2 rolls" }, [["Used", "needs-counterpart"]]],
    ["a number of rolls without the volume", { Rolls: "2" }, [["Rolls", "needs-counterpart"]]],
    [
      "a volume that cannot be read",
      { Rolls: "2", Volume: "some" },
      [
        ["Rolls", "needs-counterpart"],
        ["Volume", "unreadable"],
      ],
    ],
    [
      "two columns that say one thing",
      { id: "a", Run: "b" },
      [
        ["id", "out-of-range"],
        ["Run", "out-of-range"],
      ],
    ],
    ["words that a measurement overrides: they are read", { gamma: 0.5, wanted: 0.6 }, []],
    ["remarks", { Remarks: "odd", Notes: "more" }, []],
  ])("holds %s", (_, cells, expected) => {
    const { runs, unread } = readRunNotes([{ ...base, ...cells }]);
    expect(unread.map(({ heading, problem }) => [heading, problem.code])).toEqual(expected);
    // All of it stands in the note.
    for (const { heading, text } of unread) expect(runs[0]!.note).toContain(`${heading}: ${text}`);
  });
  it("tells why a whole page is rejected", () => {
    const { rejected, unread } = readRunNotes([{ Time: "8:30", Temp: "20C", Impression: "good" }]);
    expect(rejected[0]!.reason).toBe("outcome is missing");
    expect(unread).toMatchObject([{ heading: "Impression", row: 1, whole: true }]);
  });
});
