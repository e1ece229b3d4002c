/* Plain English, the mechanical part, in every page that people wrote. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { filesBelow } from "./examples.js";
import { calquesIn, messagesIn, sentencesOf, wordsOf } from "./language.js";

const LONGEST = 30;
/** Lists of names and of figures, which other tests hold to the code. */
const LISTS = ["docs/names.md", "docs/sources.md", "docs/api/darkroom-kinetics.api.md"];
const pages = [
  "README.md",
  "CHANGELOG.md",
  "DEVELOPERS.md",
  "SECURITY.md",
  ...filesBelow(".github", [".md"]),
  ...filesBelow("docs", [".md"]).filter((page) => !LISTS.includes(page)),
];

describe.each(pages)("%s", (page) => {
  const sentences = sentencesOf(readFileSync(page, "utf8"));
  it("has short sentences", () => {
    expect(sentences.length).toBeGreaterThan(5);
    expect(sentences.filter((sentence) => wordsOf(sentence).length > LONGEST)).toEqual([]);
  });
  it("has no calque", () => {
    expect(sentences.filter((sentence) => calquesIn(sentence).length > 0)).toEqual([]);
  });
});

const sources = filesBelow("src", [".ts"]);

describe("the sources", () => {
  const lines = sources.flatMap((path) =>
    readFileSync(path, "utf8")
      .split("\n")
      .map((text, i) => ({ place: `${path}:${i + 1}`, text })),
  );
  it("have no line over 110 columns", () => {
    expect(lines.length).toBeGreaterThan(10_000);
    expect(lines.filter(({ text }) => text.length > 110).map(({ place }) => place)).toEqual([]);
  });
  it("have no calque", () => {
    expect(lines.filter(({ text }) => calquesIn(text).length > 0)).toEqual([]);
  });
});

describe("the sentences that the sources write for people", () => {
  const messages = sources
    .filter((path) => !path.startsWith("src/handbook"))
    .flatMap((path) =>
      messagesIn(readFileSync(path, "utf8")).flatMap((text) => text.split("\n").flatMap(sentencesOf)),
    );
  it("are short", () => {
    expect(messages.length).toBeGreaterThan(200);
    expect(messages.filter((sentence) => wordsOf(sentence).length > LONGEST)).toEqual([]);
  });
});

describe("the lint", () => {
  it("joins the parts of a message", () => {
    const source = 'const said = (x: string) => "One " + `two ${x} ` + ("three " + "four.");';
    expect(messagesIn(source)).toEqual(["One two X three four."]);
  });
  it("reads prose, items and cells, and no code", () => {
    const page =
      "# A head\n\nOne `x + y` here. Two\ngo on.\n\n- item one\n- item two\n\n| a | b |\n\n```ts\nno code\n```\n";
    expect(sentencesOf(page)).toEqual([
      "A head",
      "One X here.",
      "Two go on.",
      "item one",
      "item two",
      "a",
      "b",
    ]);
  });
  it("counts words, not marks", () => {
    expect(wordsOf("one – two, 3 × four").length).toBe(4);
  });
  it.each([
    "The rooms of the causes do the arithmetic, and every room is asked.",
    "A generic law stands in.",
    "A field that nobody reads.",
    "How their errors hang together.",
    "The time that a worn bath asks for.",
    "It misses by a hair.",
    "A law that is none.",
  ])("finds a calque: %s", (text) => {
    expect(calquesIn(text)).not.toEqual([]);
  });
});
