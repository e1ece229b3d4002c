/*
 * What an editor shows over a name: for each exported type of the package its fields, in nested types and unions too, with the
 * sentence that stands at each.
 */
import { resolve } from "node:path";
import ts from "typescript";

/** One public field, `"Type.field"`, and what a hover says of it; the test finds that these two say nothing. */
export interface Hover {
  readonly name: string;
  readonly text: string;
}

/** The fields of every type that a module exports. */
export function hoversOf(file: string): readonly Hover[] {
  const program = ts.createProgram([resolve(file)], {
    strict: true,
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.NodeNext,
    types: [],
    noEmit: true,
  });
  const checker = program.getTypeChecker();
  const symbol = checker.getSymbolAtLocation(program.getSourceFile(resolve(file))!)!;
  const hovers = new Map<string, string>();
  const visit = (name: string, node: ts.Node): void => {
    if (ts.isPropertySignature(node) || ts.isMethodSignature(node)) {
      const field = `${name}.${node.name.getText()}`;
      const found = checker.getSymbolAtLocation(node.name);
      const text = ts.displayPartsToString(found?.getDocumentationComment(checker));
      // A field that tells the members of a union apart is documented by its value.
      const literal = node.type !== undefined && ts.isLiteralTypeNode(node.type);
      hovers.set(`${field}${literal ? `=${node.type.getText()}` : ""}`, literal ? text || "literal" : text);
      if (node.type) visit(field, node.type);
      return;
    }
    ts.forEachChild(node, (child) => {
      if (!ts.isParameter(child)) visit(name, child);
    });
  };
  for (const exported of checker.getExportsOfModule(symbol)) {
    const target = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
    for (const node of target.declarations ?? [])
      if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) visit(exported.name, node);
  }
  return [...hovers].map(([name, text]) => ({ name, text }));
}
