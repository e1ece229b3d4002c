/*
 * The sources page, written from the typed figures themselves: those the package stands on (src/handbook) and
 * those it is checked against (test/reference). So the page cannot name a source that is not used, nor leave
 * one out.
 */
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { filesBelow } from "./examples.js";

interface Entry {
  readonly id: string;
  readonly about: string;
  readonly source: string;
  readonly provenance: string;
  readonly rows: number;
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null;
const isEntry = (value: Record<string, unknown>): boolean =>
  ["id", "about", "source", "provenance"].every((key) => typeof value[key] === "string");

/** Every published record inside a value, however deep. */
function entriesIn(value: unknown): readonly Entry[] {
  if (!isRecord(value)) return [];
  if (!isEntry(value)) return Object.values(value).flatMap(entriesIn);
  const { id, about, source, provenance, rows } = value as unknown as Entry & { rows: unknown };
  return [{ id, about, source, provenance, rows: Array.isArray(rows) ? rows.length : 0 }];
}

/** Every string in a `sources` list or a `source` field inside a value. */
function citationsIn(value: unknown): readonly string[] {
  if (!isRecord(value)) return [];
  return Object.entries(value).flatMap(([key, part]) => {
    if (key === "sources" && Array.isArray(part)) return part as string[];
    if (key === "source" && typeof part === "string") return [part];
    return citationsIn(part);
  });
}

/** Comments that name a year: where a table of constants is cited as a whole. */
function citedInComments(file: string): readonly string[] {
  return [...readFileSync(file, "utf8").matchAll(/\/\*\*?\n?([\s\S]*?)\*\//g)]
    .map((match) =>
      (match[1] as string)
        .replace(/^[ \t]*\*[ \t]?/gm, "")
        .replace(/\s+/g, " ")
        .trim(),
    )
    .filter((text) => /\b(?:18|19|20)\d\d\b/.test(text));
}

async function loaded(
  folder: string,
): Promise<readonly (readonly [file: string, content: Record<string, unknown>])[]> {
  const files = filesBelow(folder, [".ts"]).filter(
    (file) => !file.endsWith(".test.ts") && !file.includes("/checks/"),
  );
  return Promise.all(
    files.map(
      async (file) => [file, (await import(pathToFileURL(file).href)) as Record<string, unknown>] as const,
    ),
  );
}

const escape = (text: string): string => text.replaceAll("|", "\\|").replaceAll("\n", " ");

/** The page as Markdown. */
export async function sourcesPage(): Promise<string> {
  const handbook = await loaded("src/handbook");
  const reference = await loaded("test/reference");
  const sections = handbook.flatMap(([file, content]) => {
    const cited = [...new Set([...citationsIn(content), ...citedInComments(file)])].sort();
    return cited.length === 0 ? [] : [`### ${file}\n\n${cited.map((text) => `- ${text}`).join("\n")}\n`];
  });
  const seen = new Set<string>();
  const entries = reference
    .flatMap(([, content]) => entriesIn(content))
    .filter(({ id }) => !seen.has(id) && seen.add(id));
  const lines = entries.map(
    ({ id, about, source, provenance, rows }) =>
      `| ${id} | ${escape(about)} | ${escape(source)} | ${provenance} | ${rows} |`,
  );
  return `# Sources

Written by \`npm run sources\` from the typed figures themselves; a test fails when it is stale. "Read" figures were read in the named source;
"from memory" were not seen in print; "common practice" is a fact of the trade with no single source. Figures were copied, not sentences.

## What the package stands on

The handbook: published figures that laws and defaults are made of.

${sections.join("\n")}
## What it is checked against

| record | about | source | how we came by it | rows |
| --- | --- | --- | --- | ---: |
${lines.join("\n")}

Certified values for the fits: NIST/ITL Statistical Reference Datasets, public domain: Norris, Pontius and Misra1a. Records that are not used, and why, are
listed in \`test/reference\` beside the others.
`;
}
