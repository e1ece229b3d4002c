/* The drawing of a picture against its data: where things are, what is written, what is said. */
import { DOMParser } from "linkedom";
import { describe, expect, it } from "vitest";
import {
  answerPicture,
  describePicture,
  formatTemperature,
  formatTime,
  parseTemperature,
  parseTime,
  pictureLayout,
  pictureSvg,
  roundEstimate,
  type AnswerPicture,
} from "../../src/index.js";
import { pictureTexts } from "../../src/picture/text.js";
import { boxOf, overlap, type Box, type Place } from "../../src/picture/letters.js";
import { answerTexts } from "../../src/text/answerTexts.js";
import { baseline, hut, pictureOf, pictures } from "./pictures.js";
import { anyOf, caught } from "../helpers.js";

interface Drawn {
  readonly textContent: string;
  readonly localName: string;
  getAttribute(name: string): string | null;
}
const all = (svg: string, selector: string): readonly Drawn[] => [
  ...(new DOMParser().parseFromString(svg, "text/xml").querySelectorAll(selector) as Iterable<Drawn>),
];
const number = (element: Drawn, name: string): number => Number(element.getAttribute(name));

/** Every tag is closed by its own, and nothing in a text or attribute is left unescaped. */
function wellFormed(svg: string): boolean {
  const open: string[] = [];
  for (const [, close, name, , single] of svg.matchAll(/<(\/?)([a-zA-Z]+)((?:\s[\w:-]+="[^"<]*")*)(\/?)>/g)) {
    if (close === "/") {
      if (open.pop() !== name) return false;
    } else if (single !== "/") open.push(name!);
  }
  const texts = svg.replace(/<\/?[a-zA-Z]+(?:\s[\w:-]+="[^"<]*")*\/?>/g, "");
  return open.length === 0 && !/[<>]|&(?!amp;|lt;|gt;|quot;)/.test(texts);
}

/** The box of every text. */
const textBoxes = (svg: string): readonly (Box & { readonly text: string })[] =>
  all(svg, "text").map((element) => {
    const size = number(element, "font-size");
    const anchor = (element.getAttribute("text-anchor") ?? "start") as Place["anchor"];
    const text = element.textContent;
    return { text, ...boxOf(text, size, { x: number(element, "x"), y: number(element, "y"), anchor }) };
  });

describe.each(pictures)("the drawing of %s", (_name, picture) => {
  describe.each([280, 350, 720, 1280])("at %s px", (width) => {
    const svg = pictureSvg(picture, { width });
    it("is well-formed, and every number in it is one", () => {
      expect(wellFormed(svg)).toBe(true);
      expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
    });
    it("has no text that lies on another or leaves the picture", () => {
      const boxes = textBoxes(svg);
      const { height } = pictureLayout(picture, { width });
      expect(boxes.length).toBeGreaterThan(5);
      const overlaps = boxes.flatMap((a, i) =>
        boxes
          .slice(i + 1)
          .filter((b) => overlap(a, b))
          .map((b) => `${a.text} / ${b.text}`),
      );
      expect(overlaps).toEqual([]);
      for (const { text, left, right, top, bottom } of boxes)
        expect(left >= 0 && right <= width && top >= 0 && bottom <= height, text).toBe(true);
    });
    it("has no text below 11 px", () => {
      for (const text of all(svg, "text"))
        expect(number(text, "font-size"), text.textContent).toBeGreaterThan(10.9);
    });
  });

  it("says in its description what its data say", () => {
    const { description } = describePicture(picture);
    const said = description.join(" ");
    const { axes, known, today, curves, rungs, warnings, refusals } = picture;
    expect(said).toContain(`from ${formatTemperature(axes.fromC)} to ${formatTemperature(axes.toC)}`);
    expect(said).toContain(
      `The known time is ${formatTime(known.timeS)} at ${formatTemperature(known.temperatureC)}`,
    );
    if (today === undefined) expect(said).toContain("Today has no time.");
    // The two ends: the longer time belongs to the colder one.
    const ends = /time falls from (\S+) at (\S+ °C) to (\S+) at (\S+ °C)/.exec(said);
    const usable = curves.bath.filter(({ refused }) => refused !== true);
    expect(ends === null).toBe(usable.length === 0);
    if (ends !== null) {
      const [, coldTime, cold, warmTime, warm] = ends as unknown as string[];
      const [coldC, warmC] = [cold!, warm!].map((text) => parseTemperature(text));
      expect(coldC).toBeLessThan(warmC!);
      expect(coldC).toBeCloseTo(usable[0]!.temperatureC, 0);
      expect(warmC).toBeCloseTo(usable[usable.length - 1]!.temperatureC, 0);
      if (coldTime !== "months") expect(parseTime(coldTime!)).toBeGreaterThan(parseTime(warmTime!));
    }
    expect(description.filter((line) => line.startsWith("A warning begins"))).toHaveLength(warnings.length);
    expect(description.filter((line) => line.startsWith("From "))).toHaveLength(refusals.length);
    for (const { fromC, toC } of refusals)
      expect(said).toContain(`From ${formatTemperature(fromC)} to ${formatTemperature(toC)}:`);
    const causes = describePicture(picture).rungs.filter((_, i) => rungs[i]!.kind === "cause");
    for (const { cause, change } of causes) expect(said).toContain(`${cause}: ${change}`);
    const inSvg = all(pictureSvg(picture), "desc")[0]!.textContent;
    expect(inSvg).toBe(said);
  });
});

describe("pictureSvg", () => {
  const picture = answerPicture(hut);
  const layout = pictureLayout(picture);
  const { left, right, plot, ladder, strip } = layout;
  const at = (timeS: number): number =>
    left +
    ((right - left) * Math.log(timeS / picture.axes.lowS)) / Math.log(picture.axes.highS / picture.axes.lowS);
  const height = (temperatureC: number): number => {
    const { fromC, toC } = picture.axes;
    return plot!.bottom - ((plot!.bottom - plot!.top) * (temperatureC - fromC)) / (toC - fromC);
  };
  const svg = pictureSvg(picture);

  it("puts both dots where layout and data say, colder below and longer to the right", () => {
    const dots = all(svg, "circle").map((dot) => [number(dot, "cx"), number(dot, "cy")]);
    for (const [x, y] of [
      [at(510), height(20)],
      [at(picture.today!.timeS), height(14)],
    ])
      expect(dots.some(([cx, cy]) => Math.abs(cx! - x!) < 0.01 && Math.abs(cy! - y!) < 0.01)).toBe(true);
    expect(at(600)).toBeGreaterThan(at(500));
    expect(height(10)).toBeGreaterThan(height(20));
  });
  it("draws arrows of length ln(factor), each from where the last one ended", () => {
    const scale = (right - left) / Math.log(picture.axes.highS / picture.axes.lowS);
    const arrows = all(svg, "path").filter(
      (path) => path.getAttribute("d")!.endsWith("Z") && !path.getAttribute("fill-opacity"),
    );
    const causes = picture.rungs.filter(({ kind }) => kind === "cause");
    expect(arrows).toHaveLength(causes.length);
    arrows.forEach((arrow, i) => {
      const points = arrow
        .getAttribute("d")!
        .slice(1, -1)
        .split("L")
        .map((pair) => pair.split(" ").map(Number));
      const { percent, startS, endS, general } = causes[i]!;
      expect(points[3]![0]! - points[0]![0]!).toBeCloseTo(scale * Math.log(1 + percent / 100), 1);
      expect(points[0]![0]).toBeCloseTo(at(startS), 1);
      expect(points[3]![0]).toBeCloseTo(at(endS), 1);
      // Solid where it is printed or one's own, hollow where it is a general rule.
      expect(arrow.getAttribute("class")).toBe(general ? "fill-paper line-today" : "fill-today");
      expect(points[3]![1]).toBeCloseTo(ladder!.rungs[i + 1]!.arrowY, 1);
    });
  });
  it("drops both plumb lines to the sum", () => {
    const foot = ladder!.rungs[picture.rungs.length - 1]!.arrowY;
    const plumbs = all(svg, "line").filter((line) => Math.abs(number(line, "y2") - foot) < 0.01);
    const [known, today] = [at(510), at(picture.today!.timeS)];
    expect(plumbs).toHaveLength(2);
    for (const end of ["x1", "x2"]) {
      expect(number(plumbs[0]!, end)).toBeCloseTo(known, 1);
      expect(number(plumbs[1]!, end)).toBeCloseTo(today, 1);
    }
  });
  it("hatches what has no time, between its two temperatures", () => {
    const hatched = all(svg, "rect").filter((rect) => rect.getAttribute("fill") === "url(#picture-hatch)");
    expect(hatched).toHaveLength(1);
    expect(number(hatched[0]!, "y")).toBeCloseTo(height(13), 1);
    expect(number(hatched[0]!, "y") + number(hatched[0]!, "height")).toBeCloseTo(height(6), 1);
  });
  it("puts the strip's boxes in their order, none on another", () => {
    const { boxes } = strip!;
    expect(boxes.map(({ timeS }) => timeS)).toEqual(picture.strip!.timesS);
    for (const [i, one] of boxes.entries())
      if (i > 0) expect(one.left).toBeGreaterThanOrEqual(boxes[i - 1]!.right);
    for (const timeS of picture.strip!.timesS) expect(svg).toContain(`>${formatTime(timeS)}<`);
  });
  it("rounds as roundEstimate does", () => {
    const { timeS, lowS, highS } = roundEstimate(picture.today!);
    const words = describePicture(picture);
    expect(words.time).toBe(formatTime(timeS));
    expect(words.interval).toBe(`${formatTime(lowS)} to ${formatTime(highS)}`);
    expect(words.rungs.at(-1)).toEqual({ cause: "Together", basis: words.interval, change: words.time });
    expect(svg).toContain(`>${words.time}<`);
  });
  it("says causes in people's words", () => {
    expect(describePicture(picture).rungs.map(({ cause, change }) => `${cause}: ${change}`)).toEqual([
      "At 20 °C: 8:30",
      "6° colder: 67 % more",
      "1+14 instead of 1+9: 36 % more",
      "648 cm²/l went through before: 10 % more",
      "temperature and dilution together: 6 % less",
      "Together: 20:00",
    ]);
    const causes = describePicture(pictureOf("many causes, some shorter")).rungs.map(({ cause }) => cause);
    expect(causes).toContain("continuous instead of every 60 s");
    expect(causes).toContain("mixed 4 h ago");
    expect(causes).toContain("thermometer");
    expect(causes.some((cause) => cause.startsWith("push"))).toBe(true);
    expect(describePicture(pictureOf("a bath that cools")).rungs[1]!.cause).toBe("a bath that drifts");
    const used = answerPicture({
      baseline: { timeS: 510, temperatureC: 20, usedCm2PerL: 100, ageH: 1, gamma: 0.6 },
      conditions: { usedCm2PerL: 300, ageH: 2, gamma: 0.7 },
    });
    expect(
      describePicture(used)
        .rungs.map(({ cause }) => cause)
        .slice(1, 4),
    ).toEqual([
      "300 cm²/l went through before instead of 100 cm²/l",
      "mixed 2 h ago instead of 1 h",
      "contrast, 0.7 instead of 0.6",
    ]);
  });
  it("says a cause and a side that the catalogue does not know by their own name", () => {
    const [known, colder, ...rest] = picture.rungs;
    const odd = { ...colder!, cause: "hardness", from: 3, to: 9 };
    const other = { ...colder!, cause: "temperature", from: undefined, to: 9 };
    const one = { ...colder!, cause: "push", to: 1 };
    const onesided = { ...one, from: undefined };
    const rungs = [
      known!,
      odd,
      other,
      onesided,
      { ...colder!, basis: undefined },
      ...rest,
    ] as AnswerPicture["rungs"];
    const said = describePicture({ ...picture, rungs }).rungs;
    expect(said[1]!.cause).toBe("hardness");
    expect(said[2]!.cause).toBe("temperature, 9 °C");
    expect(said[3]!.cause).toBe("push, 1 stop");
    expect(said[4]!.basis).toBe("");
    // A name that every object inherits is a name like any other.
    const inherited = [known!, { ...odd, cause: "constructor" }] as AnswerPicture["rungs"];
    expect(describePicture({ ...picture, rungs: inherited }).rungs[1]!.cause).toBe("constructor");
  });
  it("shows °F where it is asked", () => {
    const words = describePicture(picture, { unit: "F" });
    expect(words.today).toBe("today 57.2 °F");
    expect(words.rungs[1]!.cause).toBe("10.8° colder");
    expect(pictureSvg(picture, { unit: "F" })).toContain(">60°<");
    expect(svg).toContain(">15°<");
  });
  it("speaks another language by catalogues of the same shape", () => {
    const texts = {
      ...pictureTexts,
      thisBath: "dieses Bad",
      colder: (degrees: string) => `${degrees} kälter`,
    };
    const own = { ...answerTexts, bases: { ...answerTexts.bases, default: "Faustregel" } };
    const german = pictureSvg(picture, { texts, answerTexts: own });
    for (const word of ["dieses Bad", "6° kälter", "Faustregel"]) expect(german).toContain(word);
  });
  it("draws only the parts that are asked for", () => {
    const only = pictureSvg(picture, { parts: ["ladder"] });
    expect(only).toContain(">6° colder<");
    expect(only).not.toContain(">this bath<");
    expect(pictureLayout(picture, { parts: ["ladder"] })).not.toHaveProperty("plot");
    expect(pictureLayout(picture, { parts: ["picture"] })).not.toHaveProperty("ladder");
    const piece = pictureSvg(picture, { parts: ["strip"] });
    expect(piece).toContain(">13:00<");
    expect(piece).not.toContain(">6° colder<");
    expect(pictureSvg(pictureOf("own runs"), { parts: ["strip"] })).not.toContain("<text");
    expect(pictureSvg(pictureOf("a narrow interval"))).toContain("No strip");
  });
  it("says that nothing is worked out where the time is refused", () => {
    const refused = pictureSvg(pictureOf("refused, in °F"));
    expect(refused).toContain("Nothing is worked out for this.");
    expect(refused).not.toMatch(/>today/);
    expect(pictureSvg(pictureOf("past its life"))).toContain("past its life: no time");
  });
  it("leaves out a dot that lies beyond the edges", () => {
    const beyond = pictureSvg(answerPicture({ ...hut, strip: false, lowS: 100, highS: 400 }), {
      parts: ["picture"],
    });
    expect(all(beyond, "circle")).toEqual([]);
    expect(beyond).not.toMatch(/>known 8:30</);
  });
  it("names ids after their prefix, so that two drawings share a page", () => {
    const other = pictureSvg(picture, { prefix: "second" });
    const ids = all(other, "[id]").map((element) => element.getAttribute("id"));
    expect(ids).toEqual(["second-title", "second-description", "second-hatch", "second-plot"]);
    expect(other).not.toMatch(/#picture-|"picture/);
    for (const [, selector] of other.matchAll(/^(.+?)\{/gm)) expect(selector).toMatch(/^(\.second|@media)/);
  });
  it("takes its colours from the page, and brings its own as a file", () => {
    expect(svg).not.toContain("prefers-color-scheme");
    expect(svg).toContain("var(--picture-ink,currentColor)");
    const file = pictureSvg(picture, { standalone: true, heading: "Tonight", foot: ["Invented."] });
    expect(file).toContain("@media screen and (prefers-color-scheme:dark)");
    expect(file).toContain("@media print");
    expect(file).toContain(">Tonight<");
    expect(file).toContain(">Invented.<");
    expect(all(file, "title")[0]!.textContent).toBe("Tonight");
  });
  it("cuts a word that is wider than the drawing, and says so by three dots", () => {
    const long = pictureSvg(picture, { heading: "Ω".repeat(300) });
    const [word] = all(long, "text")
      .map(({ textContent }) => textContent)
      .filter((one) => one.includes("Ω"));
    expect(word).toMatch(/^Ω{20,100}…$/);
  });
  it("escapes what is written into it", () => {
    const odd = pictureSvg(picture, { heading: 'a < b & "c"\u0000' });
    expect(odd).toContain("a &lt; b &amp; &quot;c&quot;");
    expect(wellFormed(odd)).toBe(true);
  });
  it("writes hours and seconds where minutes are not whole", () => {
    expect(describePicture(pictureOf("seconds")).ticks).toContain("0:30");
    expect(describePicture(answerPicture({ baseline: { timeS: 36_000, temperatureC: 20 } })).ticks).toContain(
      "8:00:00",
    );
    expect(describePicture(pictureOf("an interval that no clock shows")).description.join(" ")).toContain(
      "months",
    );
  });
  it.each([
    ["a wrong part", { parts: ["legend"] }, "not-one-of", "/options/parts/0"],
    ["no part", { parts: [] }, "empty", "/options/parts"],
    ["parts that are holes", { parts: Array(2) }, "not-one-of", "/options/parts/0"],
    ["lines that are holes", { foot: Array(2) }, "missing", "/options/foot/0"],
    ["a width that holds no words", { width: 100 }, "out-of-range", "/options/width"],
    ["a wrong height", { plotHeight: "tall" }, "wrong-type", "/options/plotHeight"],
    ["a prefix that is no id", { prefix: "1 a" }, "out-of-range", "/options/prefix"],
    ["a prefix that is no text", { prefix: 1 }, "wrong-type", "/options/prefix"],
    ["standalone that is neither", { standalone: 1 }, "wrong-type", "/options/standalone"],
    ["a wrong heading", { heading: 1 }, "wrong-type", "/options/heading"],
    ["a wrong foot", { foot: [1] }, "wrong-type", "/options/foot/0"],
    ["a wrong unit", { unit: "K" }, "not-one-of", "/options/unit"],
    ["a catalogue that lacks a word", { texts: {} }, "missing", "/options/texts/title"],
    [
      "words for an unknown cause",
      { written: { constructor: "a" } },
      "not-one-of",
      "/options/written/constructor",
    ],
    ["a misspelt cause", { written: { dilutoin: "a" } }, "not-one-of", "/options/written/dilutoin"],
  ])("refuses %s", (_name, options, code, path) => {
    expect(caught(() => pictureSvg(picture, anyOf(options)))).toMatchObject({ code, path });
  });
  it.each([
    ["no picture", 3, ""],
    ["no axes", { ...picture, axes: undefined }, "/axes"],
    ["refused that is neither", { ...picture, refused: 1 }, "/refused"],
    ["times the wrong way round", { ...picture, axes: { ...picture.axes, lowS: 1e5 } }, "/axes/highS"],
    ["temperatures the wrong way round", { ...picture, axes: { ...picture.axes, fromC: 50 } }, "/axes/toC"],
    ["a tick beyond the edges", { ...picture, axes: { ...picture.axes, ticksS: [1] } }, "/axes/ticksS/0"],
    ["a dot outside its interval", { ...picture, today: { ...picture.today!, lowS: 1e5 } }, "/today/timeS"],
    ["a curve of one point", { ...picture, curves: { ...picture.curves, bath: [] } }, "/curves/bath"],
    ["a stretch without a code", { ...picture, refusals: [{ fromC: 0, toC: 10 }] }, "/refusals/0/code"],
    ["a warning beyond the edges", { ...picture, warnings: [{ atC: 99, code: "a" }] }, "/warnings/0/atC"],
    ["a point without a time", { ...picture, points: [{ temperatureC: 20 }] }, "/points/0/timeS"],
    ["a rung without a cause", { ...picture, rungs: [{ ...picture.rungs[0]!, cause: 3 }] }, "/rungs/0/cause"],
    ["a strip of words", { ...picture, strip: { timesS: ["a"] } }, "/strip/timesS/0"],
    ["holes in a curve", { ...picture, curves: { ...picture.curves, bath: Array(3) } }, "/curves/bath/0"],
    ["an unknown basis", { ...picture, rungs: [{ ...picture.rungs[0], basis: "" }] }, "/rungs/0/basis"],
    ...[
      ["no agitation", "agitation", null],
      ["an agitation that says nothing", "agitation", {}],
      ["a dilution of words", "dilution", "x"],
      ["a use of words", "use", "much"],
      ["a strength that is a list", "strength", []],
    ].map(([name, cause, to]): [string, unknown, string] => [
      name as string,
      { ...picture, rungs: [picture.rungs[0], { ...picture.rungs[1], from: undefined, cause, to }] },
      cause === "agitation" && to !== null ? "/rungs/1/to/everyS" : "/rungs/1/to",
    ]),
    ["a lost known side", { ...picture, rungs: [{ ...picture.rungs[1], from: NaN }] }, "/rungs/0/from"],
  ])("refuses a picture with %s", (_name, odd, path) => {
    for (const call of [pictureSvg, pictureLayout, describePicture])
      expect(caught(() => call(anyOf(odd)))).toMatchObject({ path: `/picture${path}` });
  });
  it("draws what is handed in from JSON, without knowing baseline or laws", () => {
    expect(pictureSvg(JSON.parse(JSON.stringify(picture)) as AnswerPicture)).toBe(svg);
    expect(baseline.timeS).toBe(picture.known.timeS);
  });
});
