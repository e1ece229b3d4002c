/*
 * What an app must not need: a regular expression, a cut through a sentence, a cast, or arithmetic of its own. Each finding names its
 * place. `node test/apps/rules.mjs` is part of run.mjs.
 */
import ts from "typescript";

/** Methods that take a sentence apart, or write numbers past the package. */
const METHODS = new Set(
  "match matchAll replace replaceAll search split startsWith endsWith includes indexOf slice substring toFixed toPrecision".split(
    " ",
  ),
);
const GLOBALS = new Set("Math Number parseFloat parseInt RegExp".split(" "));

/** What breaks the rules in a TypeScript file. */
export function broken(name, text) {
  const source = ts.createSourceFile(name, text, ts.ScriptTarget.ES2022, true);
  const found = [];
  const tell = (node, what) => {
    const { line } = source.getLineAndCharacterOfPosition(node.getStart());
    found.push(`${name}:${line + 1} ${what}`);
  };
  const visit = (node) => {
    if (ts.isRegularExpressionLiteral(node)) tell(node, "a regular expression");
    if (ts.isAsExpression(node) && node.type.getText() !== "const") tell(node, "a cast");
    if (ts.isTypeAssertionExpression(node)) tell(node, "a cast");
    if (ts.isNonNullExpression(node)) tell(node, "a cast with !");
    if (node.kind === ts.SyntaxKind.AnyKeyword) tell(node, "any");
    if (ts.isPropertyAccessExpression(node) && METHODS.has(node.name.text)) tell(node, `.${node.name.text}`);
    if (ts.isIdentifier(node) && GLOBALS.has(node.text)) tell(node, node.text);
    ts.forEachChild(node, visit);
  };
  visit(source);
  if (/@ts-|eslint-disable/.test(text)) found.push(`${name} silences a checker`);
  return found;
}
