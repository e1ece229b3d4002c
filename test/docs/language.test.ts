/* Plain English, the mechanical part. A page joins the list when it has been rewritten. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { calquesIn, sentencesOf, wordsOf } from "./language.js";

const LONGEST = 30;
const pages = [
  "README.md",
  "CHANGELOG.md",
  "DEVELOPERS.md",
  ".github/CONTRIBUTING.md",
  "docs/RELEASING.md",
  "docs/apps.md",
  "docs/architecture.md",
  "docs/brew.md",
  "docs/cautions.md",
  "docs/conventions.md",
  "docs/gallery.md",
  "docs/glossary.md",
  "docs/guide.md",
  "docs/models.md",
  "docs/notebooks/README.md",
  "docs/plans.md",
  "docs/versioning.md",
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

describe("the lint", () => {
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
