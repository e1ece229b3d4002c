/*
 * The diagram of the modules, drawn from the imports in src. The folders of the causes and the list of them are one
 * box. An arrow that follows from two others is left out.
 */
import { readFileSync } from "node:fs";
import { posix } from "node:path";
import { filesBelow } from "./examples.js";

/** Who imports whom: each module with the modules that its files name. */
export type Imports = ReadonlyMap<string, ReadonlySet<string>>;

/** The folders that hold a cause, as `src/causes.ts` lists them. */
export function causeFolders(): readonly string[] {
  return [...readFileSync("src/causes.ts", "utf8").matchAll(/"\.\/(\w+)\/cause\.js"/g)].map(
    ([, name]) => name!,
  );
}

/** The imports between the modules of src, with all causes as one. */
export function moduleImports(): Imports {
  const folders = new Set([...causeFolders(), "causes.ts"]);
  const moduleOf = (path: string): string => {
    const name = path.split("/")[1]!.replace("index.ts", "index");
    return folders.has(name) ? "causes" : name;
  };
  const imports = new Map<string, Set<string>>();
  for (const path of filesBelow("src", [".ts"])) {
    // It names everything.
    if (path === "src/index.ts") continue;
    const from = moduleOf(path);
    const targets = imports.get(from) ?? new Set<string>();
    imports.set(from, targets);
    for (const [, named] of readFileSync(path, "utf8").matchAll(/from "(\.\.?\/[^"]+)\.js"/g)) {
      const target = moduleOf(`${posix.join(posix.dirname(path), named!)}.ts`);
      if (target !== from) targets.add(target);
    }
  }
  return imports;
}

/** The imports without those that follow from others: a to c, where a names b and b names c. */
export function reduced(imports: Imports): readonly (readonly [from: string, to: string])[] {
  const below = (name: string, seen: Set<string>): Set<string> => {
    for (const next of imports.get(name) ?? [])
      if (!seen.has(next)) {
        seen.add(next);
        below(next, seen);
      }
    return seen;
  };
  return [...imports]
    .flatMap(([from, targets]) => [...targets].map((to) => [from, to] as const))
    .filter(([from, to]) => ![...imports.get(from)!].some((by) => by !== to && below(by, new Set()).has(to)))
    .sort((a, b) => a.join().localeCompare(b.join()));
}

/** The diagram as Mermaid text. */
export function diagram(): string {
  const imports = moduleImports();
  const boxes = [...imports.keys(), "index"]
    .sort()
    .map((name) => (name === "causes" ? `causes["${causeFolders().join(", ")}"]` : name));
  const arrows = reduced(imports).map(([from, to]) => `${from} --> ${to}`);
  return ["```mermaid", "flowchart TD", ...[...boxes, ...arrows].map((line) => `  ${line}`), "```"].join(
    "\n",
  );
}
