/*
 * Stands in for "vitest" when the tests are mutation-tested: describe, it and expect over a list that the
 * runner beside this file walks. The matchers are vitest's own (@vitest/expect); only the registration is
 * ours.
 */
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  GLOBAL_EXPECT,
  addCustomEqualityTesters,
  chai,
  customMatchers,
  getState,
  setState,
} from "@vitest/expect";

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect = (value, message) => chai.expect(value, message);
Object.assign(expect, chai.expect);
Object.defineProperties(expect, Object.getOwnPropertyDescriptors(globalThis[ASYMMETRIC_MATCHERS_OBJECT]));
expect.getState = () => getState(expect);
expect.setState = (state) => setState(state, expect);
globalThis[GLOBAL_EXPECT] = expect;
setState({ assertionCalls: 0, isExpectingAssertions: false }, expect);
expect.extend(expect, customMatchers);
expect.addEqualityTesters = addCustomEqualityTesters;

/** What the compiler checks: here it passes. */
export const expectTypeOf = () =>
  new Proxy(() => undefined, { get: (target, key, self) => self, apply: (target, own, given) => undefined });

/** What the tests of one evaluation declared: `{ name, run }`, each name once. */
export const registered = [];
let path = [];

/** A new test file begins. */
export function enter(file) {
  path = [file];
}

export function describe(name, body) {
  path.push(name);
  body();
  path.pop();
}

export function it(name, run) {
  const full = [...path, name].join(" > ");
  const before = registered.filter((test) => test.full === full).length;
  registered.push({ full, name: before === 0 ? full : `${full} #${before}`, run });
}

/** One declaration a row; the numbering of `it` keeps the names apart, so titles need no filling in. */
const each = (declare) => (rows) => (name, body) => {
  const spread = rows.every((row) => Array.isArray(row));
  for (const row of rows) declare(name, () => (spread ? body(...row) : body(row)));
};
describe.each = each(describe);
it.each = each(it);
