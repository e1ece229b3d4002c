/* A table as a spreadsheet copies or saves it, as records. */
import { describe, expect, it } from "vitest";
import { readRunNotes, tableRecords } from "../../src/index.js";

describe("tableRecords", () => {
  it.each([
    [
      "tabs",
      "Time\tTemp\n8:30\t68F\n9:00\t20 C",
      [
        { Time: "8:30", Temp: "68F" },
        { Time: "9:00", Temp: "20 C" },
      ],
    ],
    ["semicolons and decimal commas", "Time;Temp\n8:30;13,5 C", [{ Time: "8:30", Temp: "13,5 C" }]],
    ["commas", "Time,Temp\r\n8:30,68F\r\n", [{ Time: "8:30", Temp: "68F" }]],
    ["one column", "Time\n8:30\n", [{ Time: "8:30" }]],
    ["empty rows and spaces", "\n Time , Temp \n\n 8:30 , 68F \n,\n", [{ Time: "8:30", Temp: "68F" }]],
    ["quotes", 'Time,Note\n8:30,"a, ""b""\nc"', [{ Time: "8:30", Note: 'a, "b"\nc' }]],
    ["a quote within a cell", 'Time,Note\n8:30,5" tank', [{ Time: "8:30", Note: '5" tank' }]],
    ["a byte order mark", "\ufeffTime,Temp\n8:30,68F", [{ Time: "8:30", Temp: "68F" }]],
    ["a short row", "Time,Temp,Note\n8:30,68F", [{ Time: "8:30", Temp: "68F" }]],
    [
      "a cell without a heading",
      "Time,Temp\n8:30,68F,thin,\n",
      [{ "Time": "8:30", "Temp": "68F", "3": "thin" }],
    ],
    ["a heading twice", "Time,Note,Note\n8:30,a,b", [{ "Time": "8:30", "Note": "a", "Note 3": "b" }]],
    [
      "from the headings on, below a title",
      "Kaffee, Mai 2026\nin der Hütte\n\nZeit;Temperatur\n8:30;13,5 °C",
      [{ Zeit: "8:30", Temperatur: "13,5 °C" }],
    ],
    ["the first line where no headings are known", "Lamp,Lens\nred,50", [{ Lamp: "red", Lens: "50" }]],
    [
      "a title with other separators than the table",
      "Plates; May\nTime,Temp\n8:30,68F",
      [{ Time: "8:30", Temp: "68F" }],
    ],
    // GitHub Flavored Markdown Spec 0.29-gfm, section 4.10: examples 198 to 204, with other words.
    [
      "a table in Markdown",
      "# Coffee, May\n\n| Time | Temp | Note |\n|------|:----:|-----:|\n| 8:30 | 68F | |\n\nThe end, a|b.",
      [{ Time: "8:30", Temp: "68F", Note: "" }],
    ],
    ["outer strokes left out", "Time | Temp\n--- | :-:\n8:30 | 68F", [{ Time: "8:30", Temp: "68F" }]],
    [
      "a stroke as text, and words that are set",
      "| **Time** | Note |\n| --- | --- |\n| `8:30` | a \\| _b_ |\n| *9:00* | _c_ |",
      [
        { Time: "8:30", Note: "a | _b_" },
        { Time: "9:00", Note: "c" },
      ],
    ],
    [
      "no table whose dashes are too few",
      "Time | Temp\n---\n8:30 | 68F",
      [{ "Time | Temp": "---" }, { "Time | Temp": "8:30 | 68F" }],
    ],
    [
      "what a row has too much or lacks",
      "| Time | Temp |\n|---|---|\n| 8:30 |\n| 9:00 | 68F | thin |\n> a quotation",
      [{ Time: "8:30" }, { "Time": "9:00", "Temp": "68F", "3": "thin" }],
    ],
    ["one column in Markdown", "| Time |\n| --- |\n| 8:30 |", [{ Time: "8:30" }]],
    [
      "every table of runs in a diary",
      "| Time | Temp |\r\n|---|---|\r\n| 8:30 | 68F |\r\n## Sunday\r\n| Time | Temp | Lamp |\r\n" +
        "|---|---|---|\r\n| 9:00 | 70F | red |\r\n\r\n| To buy | |\r\n|---|---|\r\n| soda | 1 kg |\r\n",
      [
        { Time: "8:30", Temp: "68F" },
        { Time: "9:00", Temp: "70F", Lamp: "red" },
      ],
    ],
    ["no row in Markdown", "| Time | Temp |\n|---|---|", []],
    ["no row", "Time,Temp", []],
    ["nothing", " \n ", []],
  ])("reads %s", (_, text, records) => {
    expect(tableRecords(text)).toEqual(records);
  });
  it("keeps a heading that is a name of every object", () => {
    const [record] = tableRecords("__proto__,Time\nx,8:30");
    expect(Object.keys(record ?? {})).toEqual(["__proto__", "Time"]);
    expect(Object.getPrototypeOf(record)).toBe(Object.prototype);
  });
  it("gives what readRunNotes reads, and rejects with a reason", () => {
    const text = "Time\tTemp\tOutcome\n8:30\t68F\tgood\n14:00\t57\tgood\n15:00\t14 °C\ttoo thin";
    const { runs, rejected } = readRunNotes(tableRecords(text));
    expect(runs.map(({ timeS, outcome }) => [timeS, outcome.kind])).toEqual([
      [510, "good"],
      [900, "thin"],
    ]);
    expect(rejected.map(({ row }) => row)).toEqual([2]);
  });
  it.each([null, undefined, 3, ["Time"]])("refuses %s", (text) => {
    expect(() => tableRecords(text as unknown as string)).toThrow(
      expect.objectContaining({ path: "/text", name: "TypeError" }),
    );
  });
});
