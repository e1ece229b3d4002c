/*
 * Where things are in JSON text: the first place where it breaks the grammar (T. Bray, RFC 8259, 2017), the
 * first name that comes twice, and the place of what a JSON Pointer names. One walk without recursion, so
 * that neither depth nor size of the text matters.
 */
import { pointerTo } from "./pointer.js";

/** A place in a text, both counted from 1. */
export interface TextPlace {
  readonly line: number;
  readonly column: number;
}

/** What a walk over a text found. */
interface Walked {
  /** the offset of the value that was looked for, or of the nearest one around it */
  readonly found: number;
  /** the first break of the grammar: where, and what was expected there */
  readonly fault?: { readonly offset: number; readonly expected: string };
  /** the first name that an object has twice, where it comes again */
  readonly repeated?: Repeated;
}

/** A name that an object has twice, by its pointer and the offset at which it comes again. */
interface Repeated {
  readonly path: string;
  readonly name: string;
  readonly offset: number;
}

/** Line and column of an offset: a line ends as on any machine, and a column is a character. */
function placeOf(text: string, offset: number): TextPlace {
  const lines = text.slice(0, offset).split(/\r\n|\n|\r/);
  return { line: lines.length, column: Array.from(lines.at(-1) as string).length + 1 };
}

/** Where the value of a JSON Pointer begins; for what is missing, where the value around it begins. */
export function placeOfPointer(text: string, pointer: string): TextPlace {
  const wanted = pointer.split("/").slice(1);
  const names = wanted.map((name) => name.replaceAll("~1", "/").replaceAll("~0", "~"));
  return placeOf(text, walk(text, names).found);
}

/** The first break of the grammar. */
export interface JsonFault extends TextPlace {
  /** what was expected there */
  readonly expected: string;
  /** for a number with a comma in it: how JSON writes what may be meant */
  readonly numbers?: readonly string[];
}

/** The first break of the grammar; undefined where there is none. */
export function firstFault(text: string): JsonFault | undefined {
  const { fault } = walk(text, []);
  if (fault === undefined) return undefined;
  const { offset, expected } = fault;
  const numbers = commaNumbers(text, offset);
  return { ...placeOf(text, offset), expected, ...(numbers === undefined ? {} : { numbers }) };
}

/** More figures are no number that anybody wrote. */
const LONGEST_NUMBER = 30;

/** What a number with a comma may mean: a decimal, or thousands where three figures follow. */
function commaNumbers(text: string, offset: number): readonly string[] | undefined {
  const [, whole] = /(-?\d+),$/.exec(text.slice(Math.max(0, offset - LONGEST_NUMBER), offset)) ?? [];
  const [rest] = /^\d+/.exec(text.slice(offset, offset + LONGEST_NUMBER)) ?? [];
  if (whole === undefined || rest === undefined) return undefined;
  return [`${whole}.${rest}`, ...(rest.length === 3 && !/^-?0/.test(whole) ? [whole + rest] : [])];
}

/** No document of this package is so deep: it is refused for its shape. */
const DEEPEST = 1000;

/**
 * The first name that an object of sound JSON text has twice: which of the two values is meant, nobody can
 * tell.
 */
export function repeatedName(text: string): (TextPlace & Omit<Repeated, "offset">) | undefined {
  const { repeated } = walk(text, [], DEEPEST);
  if (repeated === undefined) return undefined;
  const { path, name, offset } = repeated;
  return { path, name, ...placeOf(text, offset) };
}

/** An object or a list that is open. */
interface Open {
  readonly close: "]" | "}";
  /** how many values it has had */
  count: number;
  /** the names that an object has had */
  readonly names: Set<string> | undefined;
  /** the name of its value that comes next, or its index as text */
  name: string;
}

/** How far a text was read; `expected` where it breaks the grammar. */
interface Cursor {
  readonly text: string;
  at: number;
  expected?: string;
  repeated?: Repeated;
}

const BLANK = /[ \t\n\r]*/y;
const SCALAR = /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.+-])/y;

/** Walks over a text toward the place of a path; beyond `most` levels of depth it ends. */
function walk(text: string, wanted: readonly string[], most = Infinity): Walked {
  const cursor: Cursor = { text, at: 0 };
  const open: Open[] = [];
  let found = 0;
  let deepest = -1;
  // How many names of the wanted path the open objects and lists follow.
  let followed = 0;
  do {
    pass(cursor, BLANK);
    const inside = open.at(-1);
    if (inside !== undefined && text[cursor.at] === inside.close) {
      cursor.at += 1;
      open.pop();
      continue;
    }
    if (inside !== undefined && !toValue(cursor, inside, open)) break;
    const depth = open.length;
    // A value beside the one before, or above it, leaves that one's path.
    followed = Math.min(followed, depth - 1);
    if (followed === depth - 1 && (depth === 0 || inside?.name === wanted[depth - 1])) {
      followed = depth;
      // Of two values of one name the last counts, as for JSON.parse.
      if (depth >= deepest) [deepest, found] = [depth, cursor.at];
    }
    const sign = text[cursor.at];
    if (sign === "{" || sign === "[") {
      const [close, names] = sign === "{" ? (["}", new Set<string>()] as const) : (["]", undefined] as const);
      open.push({ close, count: 0, name: "", names });
      cursor.at += 1;
    } else if (sign === '"') passString(cursor);
    else if (!pass(cursor, SCALAR)) cursor.expected = "a value";
  } while (cursor.expected === undefined && open.length > 0 && open.length <= most);
  if (cursor.expected === undefined) {
    pass(cursor, BLANK);
    if (cursor.at < text.length) cursor.expected = "the end of the file";
  }
  const { at: offset, expected, repeated } = cursor;
  const twice = repeated === undefined ? {} : { repeated };
  return expected === undefined ? { found, ...twice } : { found, ...twice, fault: { offset, expected } };
}

/** Passes the comma and the name before a value; false where they are not as they should be. */
function toValue(cursor: Cursor, inside: Open, open: readonly Open[]): boolean {
  const { close } = inside;
  if (inside.count > 0) {
    if (cursor.text[cursor.at] !== ",") return fail(cursor, `a comma or ${close}`);
    cursor.at += 1;
    pass(cursor, BLANK);
    if (cursor.text[cursor.at] === close) return fail(cursor, `no comma before ${close}`);
  }
  inside.name = String(inside.count);
  inside.count += 1;
  if (close === "]") return true;
  const start = cursor.at;
  if (cursor.text[start] !== '"') return fail(cursor, "a name in double quotes");
  if (!passString(cursor)) return false;
  const name = JSON.parse(cursor.text.slice(start, cursor.at)) as string;
  inside.name = name;
  if (inside.names?.has(name) === true)
    cursor.repeated ??= { path: open.map((one) => one.name).reduce(pointerTo, ""), name, offset: start };
  inside.names?.add(name);
  pass(cursor, BLANK);
  if (cursor.text[cursor.at] !== ":") return fail(cursor, "a colon");
  cursor.at += 1;
  return pass(cursor, BLANK);
}

function fail(cursor: Cursor, expected: string): false {
  cursor.expected = expected;
  return false;
}

/** Passes what a sticky pattern takes; false where it takes nothing. */
function pass(cursor: Cursor, pattern: RegExp): boolean {
  pattern.lastIndex = cursor.at;
  if (!pattern.test(cursor.text)) return false;
  cursor.at = pattern.lastIndex;
  return true;
}

const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/** Passes a string; a loop, since a pattern would go as deep as the string is long. */
function passString(cursor: Cursor): boolean {
  const { text } = cursor;
  cursor.at += 1;
  while (text[cursor.at] !== '"') {
    const sign = text[cursor.at];
    if (sign === undefined) return fail(cursor, "a closing double quote");
    if (sign < " ") return fail(cursor, "a closing double quote on the same line");
    if (sign !== "\\") cursor.at += 1;
    else if (!pass(cursor, ESCAPE)) return fail(cursor, "an escape such as \\n or \\u00e9");
  }
  cursor.at += 1;
  return true;
}
