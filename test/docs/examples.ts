/*
 * Runs the ts blocks of Markdown pages and of TSDoc: every statement that ends in `// => value` is evaluated and compared. A number in a
 * comment stands for every number that rounds to it at the digits shown, so that docs may say 585.8.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { compileFunction } from "node:vm";
import ts from "typescript";
import * as root from "../../src/index.js";
import { de } from "../../src/texts/de.js";

/** What a block may name: the package, and the language beside it. */
const library = { ...root, de };

/** One block of code and where it stands. */
export interface Block {
  readonly where: string;
  readonly code: string;
}

/** One checked line: what the docs say and what the code gives. */
export interface Outcome {
  readonly line: string;
  readonly shown: unknown;
  readonly given: unknown;
  readonly agrees: boolean;
}

/** Every file below a folder with one of the endings, sorted. */
export function filesBelow(folder: string, endings: readonly string[]): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && endings.some((ending) => entry.name.endsWith(ending)))
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((path) => !path.includes("node_modules"))
    .sort();
}

/** The ts and js blocks of a file; in TypeScript files, those of its TSDoc. */
export function blocksOf(path: string): readonly Block[] {
  const text = readFileSync(path, "utf8");
  const page = path.endsWith(".md");
  const plain = page ? text : text.replace(/^[ \t]*\* ?/gm, "");
  const shown = new Map<string, number>();
  return [...plain.matchAll(/^```(?:ts|js|cjs)\n([\s\S]*?)^```/gm)].map((match) => {
    const place = page ? headingBefore(plain, match.index) : exportAfter(plain, match.index);
    const times = (shown.get(place) ?? 0) + 1;
    shown.set(place, times);
    return { where: `${path}, ${place}${", again".repeat(times - 1)}`, code: match[1] as string };
  });
}

const headingBefore = (text: string, at: number): string =>
  [...text.slice(0, at).matchAll(/^#+ (.+)$/gm)].at(-1)?.[1] ?? "the top";
const exportAfter = (text: string, at: number): string =>
  /^export (?:const|function|interface|type) (\w+)/m.exec(text.slice(at))?.[1] ?? "the end";

/** Runs a block and returns its checked lines. */
export function runBlock({ code }: Block): readonly Outcome[] {
  const runnable = code.replace(
    /^import \{([^}]*)\} from "darkroom-kinetics(?:\/texts\/de)?";$/gm,
    (_, names: string) => `const {${names.replace(/\btype \w+,?/g, "")}} = require("darkroom-kinetics");`,
  );
  const source = ts.createSourceFile("block.ts", runnable, ts.ScriptTarget.ES2022, true);
  const rewritten = source.statements.map((statement) => {
    const comment = ts
      .getTrailingCommentRanges(runnable, statement.end)
      ?.map((range) => runnable.slice(range.pos, range.end))
      .find((text) => text.startsWith("// => "));
    const text = statement.getFullText();
    if (comment === undefined || !ts.isExpressionStatement(statement)) return text;
    const shown = comment.slice(6).trim();
    const expression = statement.expression.getText();
    return `;__record(${JSON.stringify(expression)}, () => (${expression}), () => (${shown}), ${JSON.stringify(shown)});`;
  });
  const outcomes: Outcome[] = [];
  const record = (
    line: string,
    evaluate: () => unknown,
    shownValue: () => unknown,
    shownText: string,
  ): void => {
    const given = evaluate();
    const shown = shownValue();
    outcomes.push({ line, shown, given, agrees: agrees(shown, given, shownText) });
  };
  const { outputText } = ts.transpileModule(rewritten.join("\n"), {
    compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.CommonJS },
  });
  const names = Object.keys(library);
  // A block may import the names itself; only those it does not declare are handed in.
  const free = names.filter((name) => !new RegExp(`(const|let) \\{[^}]*\\b${name}\\b`).test(outputText));
  const run = compileFunction(outputText, ["__record", "require", "console", "exports", ...free]) as (
    ...given: unknown[]
  ) => void;
  run(
    record,
    () => library,
    { log: () => undefined },
    {},
    ...free.map((name) => library[name as keyof typeof library]),
  );
  return outcomes;
}

function agrees(shown: unknown, given: unknown, shownText: string): boolean {
  if (typeof shown === "number" && typeof given === "number") {
    const decimals = /\.(\d+)/.exec(shownText)?.[1]?.length ?? 0;
    return Math.abs(shown - given) <= 0.5 * 10 ** -decimals * (1 + 1e-9);
  }
  if (typeof shown === "object" && shown !== null && typeof given === "object" && given !== null) {
    const keys = Object.keys(shown);
    return (
      keys.length === Object.keys(given).length &&
      keys.every((key) => {
        const part = (shown as Record<string, unknown>)[key];
        return agrees(part, (given as Record<string, unknown>)[key], String(part));
      })
    );
  }
  return Object.is(shown, given);
}
