import { pointerTo } from "./pointer.js";

/** Where text stops being JSON: line and column from 1. */
export interface JsonFault {
  readonly line: number;
  readonly column: number;
}

/** A whole token of JSON (ECMA-404): a string, a number, a word, or a mark. */
const TOKEN = new RegExp(
  [
    String.raw`"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"`,
    String.raw`-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][-+]?\d+)?(?![\w.])`,
    String.raw`(?:true|false|null)(?!\w)`,
    String.raw`[[\]{},:]`,
  ].join("|"),
  "y",
);
const BLANK = /[ \t\n\r]*/y;

/** What may come next: a value, a value or the end of an empty array, a name, and so on. */
type Expecting = "value" | "value-or-end" | "name" | "name-or-end" | "colon" | "comma-or-end" | "nothing";

/**
 * Finds the first place at which text is not JSON. Walks the text once and keeps a stack of its own, so that
 * depth does not matter.
 */
export function jsonFault(text: string): JsonFault | undefined {
  const open: ("[" | "{")[] = [];
  let expecting: Expecting = "value";
  let at = 0;
  for (;;) {
    BLANK.lastIndex = at;
    BLANK.exec(text);
    at = BLANK.lastIndex;
    if (at === text.length && expecting === "nothing") return undefined;
    TOKEN.lastIndex = at;
    const token = TOKEN.exec(text)?.[0];
    const next: Expecting | undefined = token === undefined ? undefined : after(token, expecting, open);
    if (next === undefined) return placeIn(text, at);
    expecting = next;
    at = TOKEN.lastIndex;
  }
}

/**
 * What may come after a token; undefined where the token itself may not come. Opens and closes what it does.
 */
function after(token: string, expecting: Expecting, open: ("[" | "{")[]): Expecting | undefined {
  const done = (): Expecting => (open.length > 0 ? "comma-or-end" : "nothing");
  const last = open.at(-1);
  if (token === "]" || token === "}") {
    const opener = token === "]" ? "[" : "{";
    const empty = expecting === (token === "]" ? "value-or-end" : "name-or-end");
    if (last !== opener || !(empty || expecting === "comma-or-end")) return undefined;
    open.pop();
    return done();
  }
  if (token === ",") return expecting !== "comma-or-end" ? undefined : last === "[" ? "value" : "name";
  if (token === ":") return expecting === "colon" ? "value" : undefined;
  if (expecting === "name" || expecting === "name-or-end") return token.startsWith('"') ? "colon" : undefined;
  if (expecting !== "value" && expecting !== "value-or-end") return undefined;
  if (token !== "[" && token !== "{") return done();
  open.push(token);
  return token === "[" ? "value-or-end" : "name-or-end";
}

/** A name that comes twice in one object, and where it comes again. */
export interface RepeatedName extends JsonFault {
  readonly path: string;
  readonly name: string;
}

/** An object or an array that is open: the names it had, and where in it the walk is. */
interface OpenValue {
  readonly names: Set<string> | undefined;
  key: string | number;
}

/**
 * Finds the first name that an object of sound JSON text has twice: which of the two values is meant, nobody
 * can tell.
 */
export function repeatedName(text: string): RepeatedName | undefined {
  const open: OpenValue[] = [];
  let naming = false;
  let at = 0;
  while (at < text.length) {
    BLANK.lastIndex = at;
    BLANK.exec(text);
    TOKEN.lastIndex = BLANK.lastIndex;
    const token = TOKEN.exec(text)?.[0];
    if (token === undefined) return undefined;
    at = TOKEN.lastIndex;
    const inside = open.at(-1);
    if (token === "{" || token === "[") open.push({ names: token === "{" ? new Set() : undefined, key: 0 });
    else if (token === "}" || token === "]") open.pop();
    else if (token === "," && inside !== undefined && inside.names === undefined)
      inside.key = Number(inside.key) + 1;
    else if (naming && inside?.names !== undefined) {
      const name = JSON.parse(token) as string;
      inside.key = name;
      if (inside.names.has(name)) {
        const path = open.map(({ key }) => key).reduce<string>(pointerTo, "");
        return { path, name, ...placeIn(text, at - token.length) };
      }
      inside.names.add(name);
    }
    naming = token === "{" || (token === "," && open.at(-1)?.names !== undefined);
  }
  return undefined;
}

function placeIn(text: string, at: number): JsonFault {
  const before = text.slice(0, at).split(/\r\n|\n|\r/);
  return { line: before.length, column: (before.at(-1) as string).length + 1 };
}
