/* Every relative link in the docs leads to a file, and every anchor to a heading. */
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { filesBelow } from "./examples.js";

const pages = ["README.md", "DEVELOPERS.md", "CHANGELOG.md", ...filesBelow("docs", [".md"])];
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
  it("name no host that a reader cannot reach", () => {
    expect(links.filter(({ link }) => /^http:/.test(link))).toEqual([]);
  });
});
