/*
 * Plain English, the mechanical part: sentences of Markdown, and turns of phrase that are no English.
 */

import ts from "typescript";

/** The texts that a source writes for people: its literals, joined where `+` joins them. */
export function messagesIn(source: string): readonly string[] {
  const found: string[] = [];
  const textOf = (node: ts.Node): string | undefined => {
    if (ts.isStringLiteralLike(node)) return node.text;
    if (ts.isTemplateExpression(node))
      return node.head.text + node.templateSpans.map(({ literal }) => `X${literal.text}`).join("");
    if (ts.isParenthesizedExpression(node)) return textOf(node.expression);
    if (!ts.isBinaryExpression(node) || node.operatorToken.kind !== ts.SyntaxKind.PlusToken) return undefined;
    const [left, right] = [textOf(node.left), textOf(node.right)];
    return left === undefined && right === undefined ? undefined : `${left ?? "X"}${right ?? "X"}`;
  };
  const visit = (node: ts.Node): void => {
    const text = textOf(node);
    if (text === undefined) ts.forEachChild(node, visit);
    else if (text.includes(" ")) found.push(text);
  };
  visit(ts.createSourceFile("source.ts", source, ts.ScriptTarget.ES2022, true));
  return found;
}

/** The sentences of a page: prose, list items and cells of tables, without code. */
export function sentencesOf(markdown: string): readonly string[] {
  const prose = markdown
    .replace(/^```[\s\S]*?^```$/gm, "\n")
    .replace(/<!--[\s\S]*?-->/g, "\n")
    .replace(/!?\[([^\]]*)\]\([^)]*\)/g, "$1")
    .replace(/`[^`\n]+`/g, "X")
    .replace(/\*\*/g, "");
  const blocks: string[] = [];
  let open = false;
  for (const line of prose.split("\n")) {
    const cells = line.trim().startsWith("|") ? line.split("|") : undefined;
    const starts = /^\s*(?:[-*] |\d+\. |#+ |>)/.test(line);
    if (cells !== undefined) blocks.push(...cells);
    else if (open && !starts && line.trim() !== "") blocks.push(`${blocks.pop() ?? ""} ${line}`);
    else blocks.push(line.replace(/^\s*(?:[-*] |\d+\. |#+ |>)\s*/, ""));
    open = cells === undefined && line.trim() !== "";
  }
  return blocks
    .flatMap((block) => block.split(/(?<=[.!?][)"”’]?)\s+(?=[\p{Lu}"“(\d])/u))
    .map((sentence) => sentence.trim())
    .filter((sentence) => sentence !== "");
}

/** The words of a sentence: what has a letter or a figure in it. */
export const wordsOf = (sentence: string): readonly string[] =>
  sentence.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word));

/** Turns of phrase that are carried over from another language, or a metaphor that explains nothing. */
const CALQUES: readonly (readonly [name: string, pattern: RegExp])[] = [
  [
    "a module called a room",
    /\bRoom: |\b(?:every|each|all|other|several|no|its|own|the \w+|of the|two) rooms?\b(?! light| temperature)/i,
  ],
  ["the code called a house", /\bhouse\b/i],
  ["stands in", /\bstands? in\b(?! (?:a|its) bath)/i],
  ["nobody reads", /\bnobody (?:reads|thought|asks)\b/i],
  ["hangs together, hangs on", /\bhangs? (?:together|on)\b/i],
  ["a bath that asks for time", /\b(?:bath|brew|developer|law|negative) (?:that )?asks? (?:for|of)\b/i],
  ["by a hair", /\b(?:by a|no) hair\b/i],
  ["that is none", /\bthat (?:is|are) none\b/i],
];

/** Which calques a text holds. */
export const calquesIn = (text: string): readonly string[] =>
  CALQUES.filter(([, pattern]) => pattern.test(text)).map(([name]) => name);
