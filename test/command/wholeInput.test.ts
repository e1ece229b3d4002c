/* Standard input that comes late, in parts or not at all. */
import { describe, expect, it } from "vitest";
import { wholeInput } from "../../src/command/wholeInput.js";

const failure = (code: string): Error => Object.assign(new Error(code), { code });

/** A stream that gives what it is told, one thing after the other: bytes, or an error. */
function stream(...parts: readonly (Uint8Array | Error)[]): (bytes: Uint8Array) => number {
  const left = [...parts];
  return (bytes) => {
    const next = left.shift() ?? new Uint8Array();
    if (next instanceof Error) throw next;
    bytes.set(next);
    return next.length;
  };
}

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** The text of a stream, and how often it was waited for. */
function read(...parts: readonly (Uint8Array | Error)[]): readonly [text: string, waits: number] {
  let waits = 0;
  const text = wholeInput(stream(...parts), () => (waits += 1));
  return [text, waits];
}

describe("wholeInput", () => {
  it("waits for a pipe that has nothing yet, before and between its parts", () => {
    const late = failure("EAGAIN");
    expect(read(late, late, bytesOf('{ "a"'), late, bytesOf(": 1 }"))).toEqual(['{ "a": 1 }', 3]);
  });
  it("joins a character that two parts share", () => {
    const bytes = bytesOf("20 °C");
    expect(read(bytes.subarray(0, 4), bytes.subarray(4))).toEqual(["20 °C", 0]);
  });
  it("takes the error of a closed pipe for its end", () => {
    expect(read(bytesOf("{}"), failure("EOF"))).toEqual(["{}", 0]);
  });
  it("leaves every other error alone", () => {
    expect(() => read(failure("EISDIR"))).toThrow("EISDIR");
  });
  it("reads nothing as no text", () => {
    expect(read()).toEqual(["", 0]);
  });
});
