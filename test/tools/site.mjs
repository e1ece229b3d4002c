/*
 * Part of npm run site, after TypeDoc: every link within the built pages leads to a file that is there, and every
 * anchor to a place in it; every page of docs is among them, and the page to try it on too.
 */
import assert from "node:assert/strict";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { parseHTML } from "linkedom";

const folder = "reports/site";
const pages = readdirSync(folder, { recursive: true }).filter(
  (file) => file.endsWith(".html") && !file.startsWith("media"),
);
const parsed = new Map(
  pages.map((page) => {
    const { document } = parseHTML(readFileSync(join(folder, page), "utf8"));
    const ids = new Set([...document.querySelectorAll("[id]")].map(({ id }) => id));
    const links = [...document.querySelectorAll("[href], [src]")].map(
      (element) => element.getAttribute("href") ?? element.getAttribute("src"),
    );
    return [page, { ids, links }];
  }),
);

const broken = [];
let count = 0;
for (const [page, { links }] of parsed)
  for (const link of links) {
    if (/^[a-z]+:/i.test(link)) continue;
    count += 1;
    const [path, anchor] = link.split("#").map(decodeURIComponent);
    const target = path === "" ? page : normalize(join(dirname(page), path));
    if (!existsSync(join(folder, target))) broken.push(`${page}: ${link} leads nowhere`);
    else if (anchor && parsed.has(target) && !parsed.get(target).ids.has(anchor))
      broken.push(`${page}: ${link} has no such place`);
  }
assert.deepEqual(broken, []);
assert.ok(pages.length > 300 && count > 10_000, `${pages.length} pages with ${count} links`);

// Every page of docs is a page of the site, and the page to try it on lies beside them.
const { projectDocuments } = JSON.parse(readFileSync("typedoc.json", "utf8"));
const left = readdirSync("docs")
  .filter((file) => file.endsWith(".md") && file !== "RELEASING.md")
  .filter((file) => !projectDocuments.includes(`docs/${file}`));
assert.deepEqual(left, [], "typedoc.json lists every page of docs");
const tried = readFileSync("docs/page/index.html", "utf8");
const media = readdirSync(join(folder, "media"));
assert.ok(
  media.some((file) => file.endsWith(".html") && readFileSync(join(folder, "media", file), "utf8") === tried),
  "the page to try it on is in the folder",
);
console.log(`${pages.length} pages, ${count} links, each to a place that is there`);
