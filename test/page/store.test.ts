/*
 * The store of the page: no change leaves a sheet that cannot be worked out, what is taken away can be put back, and
 * what waits for its outcome waits. All sheets are invented.
 */
import { proposeBrew, type DevelopmentRun, type ProposedBrew } from "darkroom-kinetics";
import { describe, expect, it } from "vitest";
import { newBath, pouredIn, type Waiting } from "../../docs/sheet/bath.js";
import { problemOf } from "../../docs/sheet/answer.js";
import { messageOf } from "../../docs/sheet/blanks.js";
import { exampleText, reasonText } from "../../docs/sheet/catalogue.js";
import { opened, sheetOf } from "../../docs/sheet/files.js";
import { followedBy } from "../../docs/sheet/inBath/before.js";
import { fromRecipe } from "../../docs/sheet/recipe.js";
import {
  blankNames,
  emptySheet,
  inLanguage,
  inTongue,
  inUnit,
  inventedSheet,
  knownKey,
  storedSheet,
  storeOf,
  type Sheet,
  type Store,
} from "../../docs/sheet/sheet.js";
import { wordsOf } from "../../docs/sheet/words.js";

const run: DevelopmentRun = { timeS: 840, temperatureC: 14, dilution: "1+9", outcome: { kind: "good" } };
const { brew } = proposeBrew({
  shelf: ["instant-coffee", "soda-anhydrous", "ascorbic-acid"],
  volumeMl: 500,
  temperatureC: 17,
  material: "plate",
}) as ProposedBrew;
const brewed = fromRecipe(
  {
    schemaVersion: 2,
    material: { name: "plate", kind: "plate" },
    developer: { kind: "brew", brew },
    baseline: { timeS: 900, temperatureC: 17, logSd: 0.5 },
  },
  inventedSheet,
);

const filled = (texts: Partial<Sheet["texts"]> = {}): Store => {
  const store = storeOf(emptySheet(inventedSheet));
  const all = {
    name: "Film A",
    time: "8:30",
    knownTemperature: "20",
    knownDilution: "1+9",
    temperature: "14",
  };
  for (const [name, text] of Object.entries({ ...all, ...texts })) store.write(name as "time", text);
  return store;
};
/** As the browser's storage keeps it. */
const stored = (sheet: Sheet): Sheet => sheetOf(JSON.parse(JSON.stringify(sheet)));
const timeS = ({ answer }: Store): number | undefined => answer.rounded?.timeS;

describe("a change that leaves nothing to work out", () => {
  it("is refused with its reason, and the sheet stays", () => {
    const store = filled();
    store.change({ runs: [run] });
    const { sheet } = store;
    // A brew has no dilution that a diluted run could be compared with.
    expect(store.change({ ...brewed, runs: [run] })).toBe(false);
    expect(store.sheet).toBe(sheet);
    expect(store.answer.stale).toBe(false);
    expect(reasonText(store.refused, sheet)).toMatch(/dilution/);
    expect(store.change({ runs: [] })).toBe(true);
    expect(store.refused).toBeUndefined();
  });
  it("leaves a text where it is written, as one that cannot be used", () => {
    const store = storeOf({ ...inventedSheet, ...brewed });
    const before = store.sheet.texts.knownDilution;
    store.write("knownDilution", "1+1");
    expect(store.change({ runs: [{ ...run, dilution: "1+1" }] })).toBe(true);
    const time = timeS(store);
    store.write("knownDilution", before);
    expect(store.sheet.texts.knownDilution).toBe(before);
    expect(Object.keys(store.answer.problems)).toEqual(["knownDilution"]);
    expect([store.answer.stale, timeS(store)]).toEqual([true, time]);
    expect(storeOf(stored(store.sheet)).answer.stale).toBe(true);
  });
});

describe("what is taken away", () => {
  const withRuns = (): Store => {
    const store = filled();
    store.change({ runs: [run] });
    return store;
  };
  it("is put back, after a reload and in another language and unit", () => {
    const store = withRuns();
    store.change({ bath: { ...newBath, run: pouredIn(followedBy(store), Date.now()) } });
    const [time, { startedMs } = { startedMs: 0 }] = [timeS(store), store.sheet.bath?.run];
    store.replace(emptySheet(store.sheet));
    expect([store.sheet.runs, store.sheet.bath?.run]).toEqual([[], undefined]);
    store.change(inLanguage(store.sheet, "de"));
    store.change(inUnit(store.sheet, "F"));
    const again = storeOf(stored(store.sheet));
    again.undo();
    expect([again.sheet.runs, timeS(again)]).toEqual([[run], time]);
    expect(again.sheet.bath?.run?.startedMs).toBe(startedMs);
    expect([again.sheet.language, again.sheet.unit]).toEqual(["de", "F"]);
    expect([again.sheet.texts.temperature, again.sheet.texts.agitation]).toEqual(["57,2 °F", "alle 60 s"]);
  });
  it("is put back over a recipe, which can be put back in turn", () => {
    const store = withRuns();
    store.replace(brewed);
    expect([store.sheet.runs, store.sheet.developer]).toEqual([[], "file"]);
    store.undo();
    expect([store.sheet.runs, store.sheet.developer, store.sheet.recipe]).toEqual([
      [run],
      "unknown",
      undefined,
    ]);
    store.undo();
    expect([store.sheet.runs, store.sheet.developer]).toEqual([[], "file"]);
  });
  it("is not lost by a sheet that holds nothing of one's own", () => {
    const store = withRuns();
    store.replace(emptySheet(store.sheet));
    store.replace(storedSheet(inventedSheet));
    store.replace(emptySheet(store.sheet));
    store.undo();
    expect(store.sheet.runs).toEqual([run]);
  });
  it("is one run where one is taken out; the negative stays in the bath", () => {
    const store = withRuns();
    store.change({ bath: { ...newBath, run: pouredIn(followedBy(store), Date.now()) } });
    store.replace({ runs: [] });
    expect(store.sheet.bath?.run).toBeDefined();
    store.change(inLanguage(store.sheet, "de"));
    store.undo();
    expect([store.sheet.runs, store.sheet.language]).toEqual([[run], "de"]);
    expect(store.sheet.bath?.run).toBeDefined();
  });
});

describe("runs that wait for their outcome", () => {
  const { outcome, ...waits } = run;
  const wait = (store: Store, timeS: number): void => {
    const { known } = followedBy(store);
    const one: Waiting = { run: { ...waits, timeS }, known: known! };
    const { bath = newBath } = store.sheet;
    store.change({ bath: { ...bath, done: [...(bath.done ?? []), one] } });
  };
  const waiting = ({ sheet }: Store): readonly number[] =>
    sheet.bath?.done?.map((one) => one.run.timeS) ?? [];

  it("wait on, whatever takes the sheet's place, and are not put back once they were judged", () => {
    const store = filled();
    wait(store, 800);
    wait(store, 900);
    for (const part of [emptySheet(store.sheet), brewed, storedSheet(inventedSheet)]) {
      store.replace(part);
      expect(waiting(store)).toEqual([800, 900]);
    }
    const { bath = newBath } = store.sheet;
    store.change({ bath: { ...bath, done: bath.done?.slice(1) } });
    store.undo();
    expect(waiting(store)).toEqual([900]);
  });
  it("are judged against what was known when they were developed, with the runs since", () => {
    const store = filled();
    wait(store, 800);
    wait(store, 900);
    const key = knownKey(store.answer);
    const [, second] = store.sheet.bath?.done ?? [];
    expect(second?.known.key).toBe(key);
    store.change({ runs: [{ ...waits, outcome }] });
    const time = timeS(store);
    store.write("time", "22:00");
    expect(knownKey(store.answer)).not.toBe(key);
    store.change({ runs: [] });
    const known = storeOf(stored(store.sheet)).sheet.bath?.done?.[1]?.known;
    store.replace(inTongue(storedSheet(known!.sheet), store.sheet));
    expect([knownKey(store.answer), store.sheet.runs, timeS(store)]).toEqual([key, [run], time]);
    expect(waiting(store)).toEqual([800, 900]);
  });
  it("have the same known time in the other unit", () => {
    const store = filled();
    const key = knownKey(store.answer);
    store.change(inUnit(store.sheet, "F"));
    expect(knownKey(store.answer)).toBe(key);
  });
});

describe("what is asked for in a blank", () => {
  const german = (name: "time", text: string): string => {
    const store = storeOf({ ...inventedSheet, ...inLanguage(inventedSheet, "de") });
    store.write(name, text);
    return messageOf(store.answer.problems[name]!, text, store.sheet);
  };
  it.each([
    ["agitation", "kippen", /wie „alle 30 s“ oder „ständig“/],
    ["time", "bald", /wie „8:30“ oder „8,5 min“/],
    ["time", "8.30", /könnte 8:30 oder 8 min 18 s/],
    ["age", "3", /könnte 3 h oder 3 Tage sein/],
    ["age", "alt", /„2 h“ oder „3 Tage“/],
    ["dilution", "dünn", /„1\+9“ oder „Stammlösung“/],
    ["count", "viele", /oder „keine“/],
    ["volume", "viel", /„0,5 l“/],
  ])("is asked for in German: %s", (name, text, said) => {
    expect(german(name as "time", text)).toMatch(said);
  });
  it.each(["en", "de"] as const)("is written so that it can be read, in %s", (language) => {
    const store = storeOf({ ...inventedSheet, ...inLanguage(inventedSheet, language) });
    let read = 0;
    for (const name of blankNames)
      for (const text of ["?", "3", "8.30", "1:9", "500", "13x9"]) {
        store.write(name, text);
        const { examples = [], readings = examples, format } = store.answer.problems[name]?.expected ?? {};
        for (const one of readings.map((each) => exampleText(each, format, store.sheet))) {
          expect(["readable", "out-of-range"], `${name}: ${one}`).toContain(
            problemOf(store.sheet, name, one)?.code ?? "readable",
          );
          read += 1;
        }
        store.write(name, inventedSheet.texts[name]);
      }
    expect(read).toBeGreaterThan(20);
  });
});

describe("runs whose film was written over", () => {
  it("say with which name and time they were made", () => {
    const store = filled();
    expect(store.sheet.made).toBeUndefined();
    store.change({ runs: [run] });
    store.write("name", "Plate");
    store.write("time", "22:00");
    store.change({ runs: [run, { ...run, timeS: 800 }] });
    expect(store.sheet.made).toEqual({ name: "Film A", time: "8:30" });
    store.change({ runs: [] });
    expect(store.sheet.made).toBeUndefined();
  });
});

describe("a sheet that is opened", () => {
  const store = filled();
  store.change({ runs: [run] });
  const good = JSON.parse(JSON.stringify(store.sheet)) as Sheet;
  it("is taken where all of it can be worked out", () => {
    expect(opened(JSON.stringify(good), store, wordsOf("en"))).toEqual({ change: sheetOf(good) });
  });
  it.each([
    ["a run in text", { runs: [{ ...run, timeS: "8:30" }] }, "runs[0].timeS"],
    ["an outcome in German", { runs: [{ ...run, outcome: { kind: "gut" } }] }, "runs[0].outcome.kind"],
    ["a number for a text", { texts: { ...good.texts, time: 9 } }, "texts.time"],
    ["no time", { read: { ...good.read, time: undefined } }, "read.time"],
    ["no texts", { texts: null }, "texts.time"],
    ["a newer version", { version: 2 }, "version"],
    ["no shelf", { shelf: undefined }, "shelf"],
    ["no runs", { runs: undefined }, "runs"],
    ["an agent that is not known", { developer: "tea" }, "developer"],
    ["another language", { language: "fr" }, "language"],
    ["a bath somewhere", { bath: { ...newBath, place: "sink" } }, "bath.place"],
    ["a negative without a clock", { bath: { ...newBath, run: {} } }, "damaged"],
  ])("is refused with the reason: %s", (_, part, said) => {
    const text = JSON.stringify({ ...good, ...part });
    for (const language of ["en", "de"] as const) {
      const answer = opened(text, { ...store, sheet: { ...good, language } }, wordsOf(language));
      expect(answer).toEqual({
        problem: expect.stringContaining(said.replace("damaged", wordsOf(language).damaged)),
      });
    }
  });
});
