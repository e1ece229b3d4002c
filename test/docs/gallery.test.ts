/* The pictures of the gallery: each can be heard, read in the dark, and is shown on its page with its data named. That they are what the library gives today is for `npm run gallery -- --check`, which needs a build. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const page = readFileSync("docs/gallery.md", "utf8");
const guide = readFileSync("docs/guide.md", "utf8");
const files = readdirSync("docs/gallery").filter((file) => file.endsWith(".svg"));

/** Where a label lies, in px, as wide as a wide typeface would make it. */
interface Box {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const numbers = (text: string | undefined): readonly [number, number] => {
  const [x = 0, y = 0] = (text ?? "").split(",").map(Number);
  return [x, y];
};

/**
 * The written labels of one panel; the widths are those of DejaVu Sans at 13 px, which is wider than most.
 */
function labelsOf(panel: string): readonly Box[] {
  return [...panel.matchAll(/<g([^>]*class="[^"]*halo[^"]*"[^>]*)>\s*<text([^>]*)>([^<]*)<\/text>/g)].map(
    ([, group = "", own = "", text = ""]) => {
      const [gx, gy] = numbers(/translate\(([^)]*)\)/.exec(group)?.[1]);
      const [tx, ty] = numbers(/translate\(([^)]*)\)/.exec(own)?.[1]);
      const width = text.trim().length * 6.9;
      const anchor = /text-anchor="(\w+)"/.exec(group)?.[1] ?? "middle";
      const left = gx + tx - (anchor === "end" ? width : anchor === "start" ? 0 : width / 2);
      return { text: text.trim(), left, right: left + width, top: gy + ty - 6, bottom: gy + ty + 6 };
    },
  );
}

describe("the gallery", () => {
  it("holds pictures, and its page or the guide shows each of them once", () => {
    expect(files.length).toBeGreaterThan(6);
    const shownOn = (text: string): readonly RegExpMatchArray[] => [
      ...text.matchAll(/!\[([^\]]*)\]\(gallery\/([^)]+)\)/g),
    ];
    const shown = [...shownOn(page), ...shownOn(guide)];
    expect(shown.map((match) => match[2]).sort()).toEqual([...files].sort());
    for (const [, spoken] of shown) expect((spoken ?? "").length).toBeGreaterThan(30);
  });
  it("has a picture for each step of the guide", () => {
    for (const part of guide.split(/^## /m).slice(1)) expect(part).toContain("![");
  });
  it("shows the README a picture of the example beside it", () => {
    const readme = readFileSync("README.md", "utf8");
    const [, spoken, file] = /!\[([^\]]*)\]\(docs\/gallery\/([^)]+)\)/.exec(readme)!;
    const heading = />Today: (\S+), nine times in ten/.exec(
      readFileSync(`docs/gallery/${file!}`, "utf8"),
    )![1];
    expect(spoken).toContain(heading);
  });
  const drawn = (file: string): string => readFileSync(`docs/gallery/${file}`, "utf8");
  // What the package draws itself is tested with its drawing.
  const answers = files.filter((file) => drawn(file).includes('class="picture"'));
  it.each(answers)(
    "%s brings its own colours for the dark and for print, and says where its data come from",
    (file) => {
      const svg = drawn(file);
      expect(svg).toContain("@media screen and (prefers-color-scheme:dark)");
      expect(svg).toContain("@media print");
      expect(svg).toMatch(/>Invented: [^<]+</);
    },
  );
  describe.each(files.filter((file) => !answers.includes(file)))("%s", (file) => {
    const svg = drawn(file);
    it("has a title, a description and the source of its data", () => {
      expect(svg).toMatch(/^<svg [^>]*role="img" aria-labelledby="title desc"/);
      expect(/<title id="title">([^<]+)</.exec(svg)?.[1]?.length).toBeGreaterThan(20);
      expect(/<desc id="desc">([^<]+)</.exec(svg)?.[1]?.length).toBeGreaterThan(100);
      expect(svg).toMatch(/class="source"[^>]*>(?:Published|Invented)/);
    });
    it("has its own dark colours, and only for screens", () => {
      expect(svg).toContain("@media screen and (prefers-color-scheme: dark)");
    });
    it("holds no value that is no number", () => {
      expect(svg).not.toMatch(/\b(?:NaN|undefined|Infinity)\b/);
    });
    it("has no label that lies on another or leaves the picture", () => {
      const [, ...panels] = svg.split(/<svg y=/);
      expect(panels.length).toBeGreaterThan(0);
      for (const panel of panels) {
        const boxes = labelsOf(panel);
        expect(boxes.length).toBeGreaterThan(1);
        const overlaps = boxes.flatMap((a, i) =>
          boxes
            .slice(i + 1)
            .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
            .map((b) => `${a.text} / ${b.text}`),
        );
        expect(overlaps).toEqual([]);
        for (const { text, left, right } of boxes) expect(left >= 0 && right <= 720, text).toBe(true);
      }
    });
    it("has lines of text that fit", () => {
      for (const [, kind, text = ""] of svg.matchAll(/<text class="(headline|source)"[^>]*>([^<]*)</g)) {
        expect(20 + text.length * (kind === "headline" ? 9.9 : 6.1), text).toBeLessThanOrEqual(720);
      }
    });
  });
});
