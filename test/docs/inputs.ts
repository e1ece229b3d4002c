/*
 * What callers write, found by the compiler: whatever stands in a parameter of an exported function, and all that is reached from there.
 * A function that a caller hands in turns it round: its parameters are written by the package, its result by the caller.
 */
import { resolve } from "node:path";
import ts from "typescript";

/** An optional field of an input: its type and name, and whether it takes an undefined. */
export interface OptionalInput {
  readonly name: string;
  readonly takesUndefined: boolean;
}

/** The inputs of a module's exports. */
export interface Inputs {
  readonly optional: readonly OptionalInput[];
  /** The arguments of a function with an undefined in each optional field that they leave out. */
  readonly filled: (name: string, given: readonly unknown[]) => readonly unknown[];
}

type Side = "caller" | "package";
const OTHER: Readonly<Record<Side, Side>> = { caller: "package", package: "caller" };

const OPTIONS: ts.CompilerOptions = {
  strict: true,
  exactOptionalPropertyTypes: true,
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.NodeNext,
  moduleResolution: ts.ModuleResolutionKind.NodeNext,
  types: [],
  skipLibCheck: true,
  noEmit: true,
};

/** Reads the exports of a module; only what is declared in its folder counts. */
export function inputsOf(file: string): Inputs {
  const path = resolve(file);
  const folder = path.slice(0, path.lastIndexOf("/"));
  const program = ts.createProgram([path], OPTIONS);
  const checker = program.getTypeChecker();
  const module = checker.getSymbolAtLocation(program.getSourceFile(path)!)!;
  const exported = new Map<string, ts.Type>();
  for (const one of checker.getExportsOfModule(module)) {
    const own = one.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(one) : one;
    if (own.flags & ts.SymbolFlags.Value) exported.set(one.name, checker.getTypeOfSymbol(own));
  }

  const membersOf = (type: ts.Type): readonly ts.Type[] =>
    type.isUnionOrIntersection() ? type.types.flatMap(membersOf) : [type];
  const isOwn = ({ declarations }: ts.Symbol): boolean =>
    declarations?.[0]?.getSourceFile().fileName.startsWith(folder) ?? true;
  const isOptional = ({ flags }: ts.Symbol): boolean => (flags & ts.SymbolFlags.Optional) !== 0;
  // Under exactOptionalPropertyTypes a field that is left out has another type than one that is undefined.
  const takesUndefined = (type: ts.Type): boolean =>
    membersOf(type).some(
      (one) =>
        one === checker.getUndefinedType() || (one.flags & (ts.TypeFlags.Any | ts.TypeFlags.Unknown)) !== 0,
    );

  const seen: Readonly<Record<Side, Set<ts.Type>>> = { caller: new Set(), package: new Set() };
  const optional = new Map<string, OptionalInput>();
  const walk = (type: ts.Type, side: Side, owner: string): void => {
    if (seen[side].has(type)) return;
    seen[side].add(type);
    if (type.isUnionOrIntersection())
      for (const one of type.types) walk(one, side, type.aliasSymbol?.name ?? owner);
    const bound = type.isTypeParameter() ? checker.getBaseConstraintOfType(type) : undefined;
    if (bound !== undefined) walk(bound, side, owner);
    if ((type.flags & ts.TypeFlags.Object) === 0) return;
    const own = type.getSymbol()?.name ?? "__type";
    const name = type.aliasSymbol?.name ?? (own.startsWith("__") ? owner : own);
    for (const one of checker.getTypeArguments(type as ts.TypeReference)) walk(one, side, name);
    for (const one of checker.getIndexInfosOfType(type)) walk(one.type, side, name);
    if (checker.isArrayType(type) || checker.isTupleType(type)) return;
    for (const signature of type.getCallSignatures()) {
      for (const one of signature.getParameters())
        walk(checker.getTypeOfSymbol(one), OTHER[side], `${name}.${one.name}`);
      walk(signature.getReturnType(), side, `${name}()`);
    }
    for (const property of type.getProperties().filter(isOwn)) {
      const field = `${name}.${property.name}`;
      const of = checker.getTypeOfSymbol(property);
      if (side === "caller" && isOptional(property))
        optional.set(`${field} ${checker.typeToString(of)} ${String(takesUndefined(of))}`, {
          name: field,
          takesUndefined: takesUndefined(of),
        });
      walk(of, side, field);
    }
  };
  for (const [name, type] of exported) walk(type, "package", name);

  /** Whether an object may be of a type: it has the required fields, with the literals that tell kinds apart. */
  const fits = (value: Readonly<Record<string, unknown>>, type: ts.Type): boolean =>
    type.getProperties().every((property) => {
      if (isOptional(property)) return true;
      if (!Object.hasOwn(value, property.name)) return false;
      const kinds = membersOf(checker.getTypeOfSymbol(property));
      const literal = kinds.every(
        (one) => one.isLiteral() || (one.flags & ts.TypeFlags.BooleanLiteral) !== 0,
      );
      return (
        !literal ||
        kinds.some((one) => checker.typeToString(one).replaceAll('"', "") === String(value[property.name]))
      );
    });
  const fill = (value: unknown, type: ts.Type): unknown => {
    if (typeof value !== "object" || value === null) return value;
    if (Array.isArray(value)) {
      const item = membersOf(type)
        .map((one) => checker.getIndexTypeOfType(one, ts.IndexKind.Number))
        .find((one) => one !== undefined);
      return item === undefined ? value : value.map((one: unknown) => fill(one, item));
    }
    const given = value as Readonly<Record<string, unknown>>;
    const found: Record<string, unknown> = { ...given };
    for (const one of membersOf(type)) {
      if ((one.flags & ts.TypeFlags.Object) === 0 || checker.isArrayType(one) || !fits(given, one)) continue;
      for (const property of one.getProperties()) {
        if (Object.hasOwn(given, property.name))
          found[property.name] = fill(given[property.name], checker.getTypeOfSymbol(property));
        else if (isOptional(property)) found[property.name] = undefined;
      }
    }
    return found;
  };
  return {
    optional: [...optional.values()],
    filled: (name, given) => {
      const parameters = exported.get(name)!.getCallSignatures()[0]!.getParameters();
      return parameters.map((one, i) =>
        given[i] === undefined ? undefined : fill(given[i], checker.getTypeOfSymbol(one)),
      );
    },
  };
}
