/* A chart as text, as a table for a spreadsheet and as a page: the same rounded times, what is refused hatched. */
import { DOMParser } from "linkedom";
import { describe, expect, it } from "vitest";
import {
  cautionCodes,
  chartCsv,
  chartRecipe,
  chartSvg,
  describeCaution,
  describeChart,
  formatTime,
  roundEstimate,
  timeChart,
  type TimeChart,
  type Caution,
} from "../../src/index.js";
import { chartTexts, type ChartTexts } from "../../src/chart/text.js";
import { de } from "../../src/texts/de.js";
import { fc, test } from "../property.js";
import { anyOf, caught } from "../helpers.js";

const baseline = { timeS: 540, temperatureC: 20, dilution: "1+9", hydroquinone: true } as const;
const chart = timeChart({ baseline, temperaturesC: [22, 18, 10], dilutions: ["1+9", "1+14"] });
const shown = (row: TimeChart["rows"][number]): string => formatTime(roundEstimate(row).timeS);
/** Soft plates in a brew that ages while it works: at each temperature it is another age at the pour-out. */
const aging = chartRecipe(
  {
    schemaVersion: 2,
    name: "Coffee for plates",
    material: { name: "dry plate", kind: "plate", areaCm2: 108 },
    developer: {
      kind: "brew",
      brew: {
        volumeMl: 750,
        ingredients: [
          { ingredient: "soda-anhydrous", massG: 40 },
          { ingredient: "instant-coffee", massG: 30 },
          { ingredient: "ascorbic-acid", massG: 12 },
        ],
      },
    },
    baseline: { timeS: 1050, temperatureC: 14, logSd: 0.6 },
    conditions: { temperatureC: 16, ageH: 1 },
  },
  { temperaturesC: [16, 14, 12, 22] },
);
/** What is looked at in an element. */
interface Drawn {
  readonly textContent: string;
  getAttribute(name: string): string | null;
}
/** The elements of a page. */
const all = (svg: string, name: string): readonly Drawn[] => [
  ...(new DOMParser().parseFromString(svg, "text/xml").querySelectorAll(name) as Iterable<Drawn>),
];
const number = (element: Drawn, name: string): number => Number(element.getAttribute(name));

/** Whether every tag is closed by its own: a strict reader of XML stops where one is not. */
function wellFormed(svg: string): boolean {
  const open: string[] = [];
  for (const [tag, close, name, , single] of svg.matchAll(
    /<(\/?)([a-z]+)((?:\s[\w:-]+="[^"<]*")*)(\/?)>/gi,
  )) {
    if (close === "/") {
      if (open.pop() !== name) return false;
    } else if (single !== "/") open.push(name as string);
    if (tag.length === 0) return false;
  }
  const texts = svg.replace(/<\/?[a-z]+(?:\s[\w:-]+="[^"<]*")*\/?>/gi, "");
  return open.length === 0 && !/[<>]|&(?!amp;|lt;|gt;|quot;)/.test(texts);
}

/**
 * Widths of letters in thousandths of their body: Helvetica, Adobe Core 14 Font Metrics, Adobe Systems, San
 * Jose, 1997 (from memory). What is not here counts as a digit.
 */
const HELVETICA: readonly (readonly [width: number, letters: string])[] = [
  [191, "'"],
  [222, "ijl"],
  [278, " .,:;ftI/!"],
  [333, "r()-"],
  [400, "°"],
  [500, "cksvxyzJ"],
  [556, "abdeghnopqu0123456789L"],
  [584, "+×"],
  [611, "FTZ"],
  [667, "ABEKPSVXY&"],
  [722, "wCDHNRU"],
  [778, "GOQ"],
  [833, "mM"],
  [944, "W"],
  [1000, "…"],
];

function helveticaWidth(text: string): number {
  const widthOf = (letter: string): number =>
    HELVETICA.find(([, letters]) => letters.includes(letter))?.[0] ?? 556;
  return Array.from(text).reduce((sum, letter) => sum + widthOf(letter), 0) / 1000;
}

describe("describeChart", () => {
  it("has a line for each temperature and a column for each dilution", () => {
    const [known, head, ...lines] = describeChart(chart);
    expect(known).toBe("Known: 9:00 at 20 °C, 1+9.");
    expect(head?.trim().split(/\s+/)).toEqual(["1+9", "1+14"]);
    expect(lines.slice(0, 3).map((line) => line.slice(0, 5))).toEqual(["22 °C", "18 °C", "10 °C"]);
    for (const i of [0, 1])
      for (const column of [0, 1]) expect(lines[i]).toContain(shown(chart.rows[column * 3 + i]!));
  });
  it("gives no time where it is refused, and says why under its letter", () => {
    const lines = describeChart(chart);
    const cold = lines.find((line) => line.startsWith("10 °C"))!;
    expect(cold.match(/no time/g)).toHaveLength(2);
    expect(cold).not.toMatch(/\d:\d\d/);
    const letter = /no time (\w)/.exec(cold)![1]!;
    expect(lines.find((line) => line.startsWith(`${letter}  Stop: `))).toMatch(/Hydroquinone/);
  });
  it.each([
    ["English", undefined, /Below the usual/, /Above the usual/],
    ["German", de.chart, /Unter den üblichen/, /Über den üblichen/],
  ])("gives two sentences of one code a letter each: %s", (_, texts, below, above) => {
    const warm = timeChart({
      baseline: { timeS: 720, temperatureC: 20 },
      temperaturesC: [16, 17, 26],
    });
    const lines = describeChart(warm, texts);
    const letterOf = (sentence: RegExp): string => lines.find((line) => sentence.test(line))![0]!;
    const rowOf = (temperature: string): string => lines.find((line) => line.startsWith(temperature))!;
    expect(letterOf(below)).not.toBe(letterOf(above));
    expect(rowOf("16")).toMatch(new RegExp(`${letterOf(below)}\\w*$`));
    expect(rowOf("17")).toMatch(new RegExp(`${letterOf(below)}\\w*$`));
    expect(rowOf("26")).not.toMatch(new RegExp(`${letterOf(below)}\\w*$`));
    expect(rowOf("26")).toMatch(new RegExp(`${letterOf(above)}\\w*$`));
  });
  it("gives the same letters in every language, each with one sentence", () => {
    const { dilution } = baseline;
    const wide = timeChart({
      baseline: { timeS: 540, temperatureC: 20, dilution, agitation: { everyS: 60 } },
      conditions: { agitation: { everyS: 600 } },
      temperaturesC: [24, 22, 20, 18, 16, 14, 12, 9, 8],
      dilutions: ["1+4", "1+9", "1+24", "1+49"],
    });
    const lettersOf = (texts?: ChartTexts): readonly (string | undefined)[] =>
      describeChart(wide, texts).map((line) => /^\d+ °C.* (\w+)$|^(\w+) {2}\D/.exec(line)?.slice(1).join(""));
    expect(lettersOf(de.chart)).toEqual(lettersOf());
    const german = new Map<string, string>();
    for (const { cautions = [] } of wide.rows)
      for (const { message, ...caution } of cautions.filter(({ severity }) => severity !== "note")) {
        const said = describeCaution({ ...caution, message }, de.cautions);
        expect(said).toBe(german.get(message) ?? said);
        german.set(message, said);
      }
    expect([...german.keys()].some((message) => message.includes("interval is wide"))).toBe(true);
    expect([...german.keys()].some((message) => message.includes("from the temperature"))).toBe(true);
  });
  it("gives one letter to cautions that differ in their figures alone, with the worst and its place", () => {
    const messages = aging.rows.flatMap(({ cautions = [] }) =>
      cautions.filter(({ code }) => code === "bath-may-fail").map(({ message }) => message),
    );
    expect(new Set(messages).size).toBe(3);
    const lines = describeChart(aging);
    const about = lines.filter((line) => line.includes("may fail"));
    expect(about).toHaveLength(1);
    // The coldest bath is the oldest when the plate is done.
    expect(about[0]).toBe(`a  Take care: ${messages[2]!} (at 12 °C)`);
    const cells = lines.filter((line) => /^\d\d °C/.test(line));
    expect(cells.map((line) => / [a-z]*a[a-z]*$/.test(line))).toEqual([true, true, true, false]);
  });
  it("says first what harms the negative, then what makes the time less sure", () => {
    const codes = describeChart(aging).flatMap((line) => /^[a-z] {2}Take care: (.*)/.exec(line)?.[1] ?? []);
    const place = (words: string): number => codes.findIndex((line) => line.includes(words));
    expect(place("gelatin swells")).toBeGreaterThan(-1);
    expect(place("gelatin swells")).toBeLessThan(place("Below the usual"));
    expect(place("gelatin swells")).toBeLessThan(place("interval is wide"));
  });
  it("has every letter of a page explained on it", () => {
    const texts = all(chartSvg(aging), "text").map((text) => text.textContent);
    const explained = texts.flatMap((text) => /^([a-z]): /.exec(text)?.[1] ?? []);
    const used = texts.filter((text) => /^[a-z]+$/.test(text)).flatMap((text) => Array.from(text));
    expect(used.length).toBeGreaterThan(4);
    expect(explained).toEqual([...new Set(used)].sort());
    expect(texts.join(" ")).not.toMatch(/more cautions?/);
  });
  it("says of a refused cell only what stops it", () => {
    const { dilution } = baseline;
    const odd = timeChart({ baseline: { timeS: 9000, temperatureC: 20, dilution }, temperaturesC: [57, 3] });
    expect(odd.rows.map(({ refused }) => refused)).toEqual([true, true]);
    const lines = describeChart(odd);
    expect(lines.filter((line) => /^[a-z] {2}/.test(line)).map((line) => line.slice(0, 9))).toEqual([
      "a  Stop: ",
      "b  Stop: ",
    ]);
    expect(lines.join("\n")).not.toMatch(/Take care|Note/);
    expect(chartCsv(odd)).toMatch(/,true,maybe-fahrenheit\r\n.*,true,temperature-limit\r\n$/);
    expect(chartSvg(odd)).not.toMatch(/Take care|Note:/);
    // The data has them all, as compensate gives them.
    expect(odd.rows[0]?.cautions?.length).toBeGreaterThan(1);
    // A note of every time that is given stays a note of all.
    const mixed = describeChart(timeChart({ baseline, temperaturesC: [18, 16, 57] }));
    expect(mixed.filter((line) => line.startsWith("Note: "))).toEqual([
      expect.stringMatching(/spread is used\.$/),
    ]);
  });
  it("begins its columns at one place", () => {
    const [, head, first, second] = describeChart(chart) as [string, string, string, string];
    const column = head.indexOf("1+14");
    expect([first, second].map((line) => line.slice(column - 2, column))).toEqual(["  ", "  "]);
  });
  it("writes months where no clock shows the time", () => {
    const slow = timeChart({ baseline: { timeS: 1e6, temperatureC: 40 }, temperaturesC: [0] });
    const rows = slow.rows.map((row) => ({ ...row, refused: false }));
    expect(describeChart({ ...slow, rows })[1]).toMatch(/months/);
  });
  it("speaks another language", () => {
    const texts = { ...chartTexts, noTime: "keine Zeit", to: "bis" };
    const lines = describeChart(chart, texts).join("\n");
    expect(lines).toMatch(/keine Zeit/);
    expect(lines).toMatch(/\d bis \d/);
  });
  it.each([
    ["no chart", undefined, "/chart"],
    ["a cell too few", { ...chart, rows: chart.rows.slice(1) }, "/chart/rows"],
    [
      "a time of text",
      { ...chart, rows: [{ ...chart.rows[0], timeS: "9:00" }, ...chart.rows.slice(1)] },
      "/chart/rows/0/timeS",
    ],
    [
      "a refusal of text",
      { ...chart, rows: [{ ...chart.rows[0], refused: "no" }, ...chart.rows.slice(1)] },
      "/chart/rows/0/refused",
    ],
    ["a dilution of parts", { ...chart, dilutions: ["1+9", 14] }, "/chart/dilutions/1"],
  ])("refuses %s", (_, wrong, path) => {
    expect(caught(() => describeChart(anyOf(wrong)))).toMatchObject({ path });
  });
});

describe("chartCsv", () => {
  it("has a line for each row, and no time where it is refused", () => {
    const [head, ...lines] = chartCsv(chart).trimEnd().split("\r\n");
    const names = head!.split(",");
    expect(lines).toHaveLength(chart.rows.length);
    lines.forEach((line, i) => {
      const row = chart.rows[i]!;
      const cells: Record<string, string> = Object.fromEntries(
        line.split(",").map((cell, at) => [names[at], cell]),
      );
      expect(cells).toMatchObject({
        dilution: row.dilution,
        temperatureC: String(row.temperatureC),
        refused: String(row.refused),
      });
      expect(cells["timeS"]).toBe(row.refused ? "" : String(roundEstimate(row).timeS));
    });
  });
  it("quotes what holds a comma or a quote", () => {
    const odd = {
      ...chart,
      temperaturesC: [20],
      dilutions: ['a,"b"'],
      rows: [{ ...chart.rows[0]!, dilution: 'a,"b"' }],
    };
    expect(chartCsv(odd)).toMatch(/^"a,""b""",/m);
  });
});

describe("chartSvg", () => {
  const svg = chartSvg(chart);
  it("is one A4 page of well-formed XML", () => {
    expect(wellFormed(svg)).toBe(true);
    const root = all(svg, "svg")[0]!;
    expect(["width", "height", "viewBox"].map((name) => root.getAttribute(name))).toEqual([
      "210mm",
      "297mm",
      "0 0 210 297",
    ]);
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  });
  it("is black on white, whatever the printer", () => {
    const colours = [...svg.matchAll(/(?:fill|stroke)="([^"]+)"/g)].map(([, colour]) => colour);
    expect(new Set(colours)).toEqual(new Set(["black", "white", "url(#hatched)"]));
  });
  it("hatches each refused cell and no other", () => {
    const hatched = all(svg, "rect").filter((rect) => rect.getAttribute("fill") === "url(#hatched)");
    expect(hatched).toHaveLength(chart.rows.filter(({ refused }) => refused).length);
    expect(svg.match(/no time/g)).toHaveLength(2);
    const warm = timeChart({ baseline, temperaturesC: [20] });
    expect(chartSvg(warm)).not.toMatch(/url\(#hatched\)"|no time|Hatched/);
  });
  it("shows the rounded time of every cell that may be used", () => {
    const texts = all(svg, "text").map((text) => text.textContent);
    for (const row of chart.rows) if (!row.refused) expect(texts).toContain(shown(row));
  });
  it("keeps its escapes: a heading is text and nothing else", () => {
    const odd = chartSvg(chart, { title: '<script>&"\u0000\ud800 plates' });
    expect(wellFormed(odd)).toBe(true);
    expect(odd).toContain("&lt;script&gt;&amp;&quot; plates");
    expect(all(odd, "script")).toEqual([]);
  });
  test.prop(
    [
      fc.integer({ min: 1, max: 20 }),
      fc.integer({ min: 1, max: 5 }),
      fc.integer({ min: 5, max: 30 }),
      fc.constantFrom(5, 540, 90000),
      fc.string({ maxLength: 200 }),
    ],
    { numRuns: 30 },
  )("stays on its page, whatever is on it", (lines, columns, fromC, timeS, title) => {
    const full = timeChart({
      baseline: { ...baseline, timeS, emulsion: "soft" },
      conditions: { usedCm2PerL: 400, ageH: 30 },
      temperaturesC: Array.from({ length: lines }, (_, i) => fromC + i),
      dilutions: ["1+4", "1+9", "1+14", "1+24", "1+99"].slice(0, columns),
    });
    const drawn = chartSvg(full, { title });
    expect(wellFormed(drawn)).toBe(true);
    for (const text of all(drawn, "text")) {
      const width = helveticaWidth(text.textContent) * number(text, "font-size");
      const shift = text.getAttribute("text-anchor") === "middle" ? width / 2 : 0;
      expect(number(text, "x") - shift).toBeGreaterThanOrEqual(5);
      expect(number(text, "x") - shift + width).toBeLessThanOrEqual(205);
      expect(number(text, "y")).toBeLessThanOrEqual(292);
      // 5 points: what is smaller is not read.
      expect(number(text, "font-size")).toBeGreaterThan(1.76);
    }
    const lower = all(drawn, "rect").filter((rect) => rect.getAttribute("fill") === "url(#hatched)");
    for (const rect of lower) expect(number(rect, "y") + number(rect, "height")).toBeLessThanOrEqual(285);
  });
  /** A page of usable cells, each with so many cautions. */
  const crowded = (count: number, temperaturesC: readonly number[]): readonly string[] => {
    const cautions = Array.from(
      { length: count },
      (_, i) => ({ code: cautionCodes[i]!, severity: "warn", message: `Caution ${i}.` }) as Caution,
    );
    const usable = timeChart({ baseline: { timeS: 540, temperatureC: 20 }, temperaturesC });
    const rows = usable.rows.map((row) => ({ ...row, refused: false, cautions }));
    return all(chartSvg({ ...usable, rows }), "text").map((text) => text.textContent);
  };
  it("prints as many cautions as the page has place for", () => {
    const texts = crowded(40, [20, 18, 16]);
    expect(texts.filter((text) => /: Take care: Caution \d+\./.test(text))).toHaveLength(40);
    expect(texts.join(" ")).not.toMatch(/more cautions?/);
  });
  it("counts the cautions that find no place, and leaves out their letters", () => {
    const texts = crowded(
      40,
      Array.from({ length: 20 }, (_, i) => 30 - i),
    );
    const explained = texts.flatMap((text) => /^([a-z]+): Take care/.exec(text)?.[1] ?? []);
    expect(explained.length).toBeGreaterThan(10);
    expect(explained.length).toBeLessThan(40);
    expect(texts).toContain(`${40 - explained.length} more cautions are in the chart's data.`);
    expect(texts.filter((text) => text === explained.join(""))).toHaveLength(20);
  });
  it.each([
    [
      "more lines than a page takes",
      { temperaturesC: Array.from({ length: 21 }, (_, i) => i) },
      "/chart/temperaturesC",
    ],
    [
      "more columns",
      { temperaturesC: [20], dilutions: ["1+4", "1+5", "1+6", "1+7", "1+8", "1+9"] },
      "/chart/dilutions",
    ],
  ])("refuses %s", (_, axes, path) => {
    expect(caught(() => chartSvg(timeChart({ baseline, ...axes })))).toMatchObject({
      code: "out-of-range",
      path,
    });
  });
  it("refuses a heading that is no text", () => {
    expect(caught(() => chartSvg(chart, anyOf({ title: 7 })))).toMatchObject({ path: "/options/title" });
  });
});
