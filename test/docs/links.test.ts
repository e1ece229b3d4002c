/* Every relative link in the docs leads to a file, and every anchor to a heading. */
import { existsSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { describe, expect, it } from "vitest";
import { filesBelow } from "./examples.js";

const pages = [
  "README.md",
  "DEVELOPERS.md",
  "CHANGELOG.md",
  "SECURITY.md",
  ".github/CONTRIBUTING.md",
  ...filesBelow("docs", [".md"]),
];
/** A path against a pattern of `files`: a star is any part of a name. */
const matchesGlob = (path: string, pattern: string): boolean =>
  new RegExp(`^${pattern.replaceAll(".", "\\.").replaceAll("*", "[^/]*")}$`).test(path);
const slug = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} -]/gu, "")
    .replaceAll(" ", "-");
const links = pages.flatMap((page) =>
  [
    ...readFileSync(page, "utf8")
      .replace(/^```[\s\S]*?^```/gm, "")
      .matchAll(/\]\(([^)\s]+)\)/g),
  ].map((match) => ({ page, link: match[1] as string })),
);

describe("links in the docs", () => {
  it("are there to be checked", () => {
    expect(links.length).toBeGreaterThan(5);
  });
  it("lead to files and headings", () => {
    const broken = links.filter(({ page, link }) => {
      if (/^https?:|^mailto:/.test(link)) return false;
      const [path = "", anchor] = link.split("#");
      const target = path === "" ? page : join(dirname(page), path);
      if (!existsSync(target)) return true;
      if (anchor === undefined || !target.endsWith(".md")) return false;
      const headings = [...readFileSync(target, "utf8").matchAll(/^#+ (.+)$/gm)].map((match) =>
        slug(match[1] as string),
      );
      return !headings.includes(anchor);
    });
    expect(broken).toEqual([]);
  });
  it("lead to files of the published package, in the pages that travel with it", () => {
    const { files } = JSON.parse(readFileSync("package.json", "utf8")) as { files: readonly string[] };
    const patterns = files.filter((one) => !one.startsWith("!"));
    const packed = (path: string): boolean =>
      ["README.md", "LICENSE", "package.json"].includes(path) ||
      (!files.includes(`!${path}`) &&
        patterns.some((one) => path === one || path.startsWith(`${one}/`) || matchesGlob(path, one)));
    const travelling = links.filter(({ page, link }) => packed(page) && !/^https?:|^mailto:|^#/.test(link));
    expect(travelling.length).toBeGreaterThan(30);
    expect(
      travelling.filter(({ page, link }) => !packed(normalize(join(dirname(page), link.split("#")[0]!)))),
    ).toEqual([]);
  });
  it("name no host that a reader cannot reach", () => {
    expect(links.filter(({ link }) => /^http:/.test(link))).toEqual([]);
  });
});
