/*
 * The blanks of the page's sheet: what an empty one is taken as, which must be filled in, and that no text in one
 * keeps the others from being followed.
 */
import assert from "node:assert/strict";
import { describe, it, mock } from "node:test";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import fc from "fast-check";

const at = (path) => fileURLToPath(new URL(`../../docs/sheet/${path}`, import.meta.url));

/** The store of the page, as the page bundles it. */
const { outputFiles } = await build({
  stdin: {
    contents: 'export * from "./sheet.ts"; export { notFollowed } from "./inBath/before.ts";',
    resolveDir: at("."),
  },
  bundle: true,
  write: false,
  format: "esm",
  target: "es2022",
  tsconfig: at("tsconfig.json"),
});
const code = Buffer.from(outputFiles[0].text).toString("base64");
const { blankNames, emptySheet, inUnit, inventedSheet, notFollowed, storeOf } = await import(
  `data:text/javascript;base64,${code}`
);

const filled = {
  time: "8:00",
  knownTemperature: "20",
  knownDilution: "1+25",
  temperature: "16",
  dilution: "1+25",
};

function filledStore() {
  const store = storeOf(emptySheet(inventedSheet));
  for (const [name, text] of Object.entries(filled)) store.write(name, text);
  return store;
}

const timeS = ({ answer }) => answer.rounded?.timeS;

describe("an emptied blank", () => {
  for (const [name, text] of [
    ["age", "2 weeks"],
    ["count", "20"],
    ["push", "1"],
    ["agitation", "stand"],
    ["knownAgitation", "continuous"],
    ["spread", "50 %"],
    ["format", "40x50 cm"],
    ["volume", "2 l"],
    ["dilution", "1+50"],
  ])
    it(`goes back to its default: ${name}`, () => {
      const store = filledStore();
      // Size and volume count where something went through.
      if (name === "format" || name === "volume") store.write("count", "3");
      const before = store.answer.compensation;
      store.write(name, text);
      assert.notDeepEqual(store.answer.compensation, before);
      store.write(name, "");
      assert.deepEqual(store.answer.problems, {});
      assert.equal(store.answer.stale, false);
      assert.deepEqual(store.answer.compensation, before);
    });
  it("of the bath follows the known time", () => {
    const store = filledStore();
    store.write("dilution", "");
    store.write("knownDilution", "1+9");
    assert.deepEqual(store.answer.conditions.dilution, store.answer.given.baseline.dilution);
  });
  it("without a default says so, and its old time is stale", () => {
    const store = filledStore();
    store.write("temperature", "");
    assert.deepEqual(Object.keys(store.answer.problems), ["temperature"]);
    assert.equal(store.answer.stale, true);
  });
});

describe("the bath", () => {
  it("names the blank that cannot be read, in both languages", () => {
    const store = filledStore();
    assert.equal(notFollowed(store), "");
    store.write("temperature", "cold");
    assert.match(notFollowed(store), /^Do not use this time\. .*: temperature of the bath\.$/);
    store.change({ language: "de" });
    assert.match(notFollowed(store), /^Nimm diese Zeit nicht\. .*: Temperatur des Bads\.$/);
    store.write("temperature", "16");
    assert.equal(notFollowed(store), "");
  });
  it("says that there is no time where there is none", () => {
    assert.match(notFollowed(storeOf(emptySheet(inventedSheet))), /^There is no time for this bath/);
  });
});

describe("an empty sheet", () => {
  it("names what must be filled in, until it is", () => {
    const store = storeOf(emptySheet(inventedSheet));
    assert.deepEqual(store.answer.missing, ["time", "knownTemperature", "knownDilution", "temperature"]);
    // The dilution of the bath is taken from the known one, which is named already.
    store.write("dilution", "thin");
    assert.ok(store.answer.missing.includes("dilution"));
    store.write("dilution", "");
    store.write("knownDilution", "1+25");
    store.write("time", "8:00");
    assert.deepEqual(store.answer.missing, ["knownTemperature", "temperature"]);
    assert.equal(timeS(store), undefined);
    store.write("knownTemperature", "20");
    store.write("temperature", "20");
    assert.deepEqual(store.answer.missing, []);
    assert.equal(timeS(store), 480);
  });
});

describe("the sheet is followed", () => {
  it("after the unit was changed beside a temperature that cannot be read", () => {
    const store = filledStore();
    store.write("temperature", "cold");
    store.change(inUnit(store.sheet, "F"));
    store.write("time", "16:00");
    store.write("temperature", "60.8");
    assert.equal(store.answer.stale, false);
    assert.ok(timeS(store) > 960);
  });
  it("after a spread in seconds was wider than a time of nothing allows", () => {
    const store = filledStore();
    store.write("spread", "60 s");
    store.write("time", "0:00");
    assert.equal(store.answer.problems.time?.code, "out-of-range");
    store.write("time", "16:00");
    assert.deepEqual(store.answer.problems, {});
    assert.equal(store.answer.given.baseline.timeS, 960);
  });
  it("whatever is typed, in any order", () => {
    const complained = mock.method(console, "error", () => undefined);
    const text = fc.constantFrom(
      ...["", " ", "x", "0", "8", "20", "68", "300", "8:00", "0:00", "1000 s", "1+9", "1:9", "stand"],
      ...["every 30 s", "10 %", "none", "9x12", "500 ml", "3 h", "3 weeks", "-1", "9999"],
    );
    const typed = fc.tuple(fc.constantFrom(...blankNames), text);
    fc.assert(
      fc.property(fc.array(fc.oneof(typed, fc.constant("unit")), { maxLength: 12 }), (steps) => {
        const store = storeOf(inventedSheet);
        for (const step of steps)
          if (step === "unit") store.change(inUnit(store.sheet, store.sheet.unit === "C" ? "F" : "C"));
          else store.write(...step);
      }),
      { numRuns: 15 },
    );
    assert.equal(complained.mock.callCount(), 0);
    complained.mock.restore();
  });
});
