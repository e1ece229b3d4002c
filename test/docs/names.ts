/*
 * The page of names, written from the public face itself: every function, law and list that the package
 * exports, with the first sentence of its docstring. So no name is missing, and none is told otherwise than
 * beside the code.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

/** A value that is exported: the group it stands in, how it is called, and what it is for. */
export interface ExportedName {
  readonly group: string;
  readonly name: string;
  readonly call: string;
  readonly purpose: string;
}

const parsed = (file: string): ts.SourceFile =>
  ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest, true);

/**
 * The first sentence of a docstring. A full stop inside figures, brackets or an abbreviation ends no
 * sentence: a capital or the end has to follow.
 */
export function firstSentence(text: string): string {
  const line = text
    .replace(/\{@link (\w+)\}/g, "`$1`")
    .replace(/\s+/g, " ")
    .trim();
  return /^.*?[.?!](?= [A-Z`]|$)/.exec(line)?.[0] ?? line;
}

/**
 * The parameters of a function as they are written in a call; one that can be left out stands in square
 * brackets.
 */
function parametersOf(node: ts.FunctionDeclaration): string {
  const names = node.parameters.map(({ name, questionToken, initializer }) => {
    const text = ts.isIdentifier(name) ? name.text : "options";
    return questionToken || initializer ? `[${text}]` : text;
  });
  return `(${names.join(", ")})`;
}

function describedIn(file: string, name: string): Pick<ExportedName, "call" | "purpose"> {
  for (const node of parsed(file).statements) {
    const declared = ts.isFunctionDeclaration(node)
      ? node.name
      : ts.isVariableStatement(node)
        ? node.declarationList.declarations[0]?.name
        : undefined;
    if (!declared || !ts.isIdentifier(declared) || declared.text !== name) continue;
    const docs = ts.getJSDocCommentsAndTags(node).find(ts.isJSDoc);
    return {
      call: name + (ts.isFunctionDeclaration(node) ? parametersOf(node) : ""),
      purpose: firstSentence(ts.getTextOfJSDocComment(docs?.comment) ?? ""),
    };
  }
  throw new Error(`${file} declares no ${name}`);
}

/** Every value that `src/index.ts` exports, in its order; the groups are the comments there. */
export function exportedNames(): readonly ExportedName[] {
  const index = parsed("src/index.ts");
  let group = "";
  return index.statements.flatMap((node) => {
    group = /^\/\/ (.+)$/m.exec(node.getFullText())?.[1] ?? group;
    if (
      !ts.isExportDeclaration(node) ||
      node.isTypeOnly ||
      !node.exportClause ||
      !ts.isNamedExports(node.exportClause)
    )
      return [];
    const from = (node.moduleSpecifier as ts.StringLiteral).text;
    const file = join("src", from.replace(/\.js$/, ".ts"));
    return node.exportClause.elements
      .filter(({ isTypeOnly }) => !isTypeOnly)
      .map(({ name }) => ({ group, name: name.text, ...describedIn(file, name.text) }));
  });
}

const escaped = (text: string): string => text.replaceAll("|", "\\|");

/** The whole page. */
export function namesPage(): string {
  const names = exportedNames();
  const parts = [...new Set(names.map(({ group }) => group))].map((group) => {
    const rows = names
      .filter((each) => each.group === group)
      .map(({ call, purpose }) => `| \`${call}\` | ${escaped(purpose)} |`);
    return [`## ${group}`, "", "| name | what it is for |", "| --- | --- |", ...rows, ""].join("\n");
  });
  return [
    "# Every name",
    "",
    `The ${names.length} functions, laws and lists that the package exports, module by module. What is in square brackets may be left out. Units, ranges, errors, equations and`,
    "sources are in the docstring of each, which an editor shows; the types are in the package. This page is written from the code by `npm run names`.",
    "",
    ...parts,
  ].join("\n");
}
