import { describe, expect, it } from "vitest";
import {
  compensate,
  describePlan,
  planProcess,
  planRecipe,
  replaceDevelopment,
  type PlanTexts,
  type ProcessMaterial,
  type ProcessPlan,
} from "../../src/index.js";
import { processSentences } from "../../src/process/text.js";
import { planTexts } from "../../src/text/planTexts.js";
import { anyOf } from "../helpers.js";
import { hut, refusal } from "./helpers.js";

const indented = (line: string): boolean => line.startsWith("  ");

describe("a plan for the wall", () => {
  it("says what to do and when, in few lines", () => {
    const baths = {
      stop: { dilution: "1+19" },
      wash: { method: "soak", durationS: 500, temperatureC: 18.5 },
      fix: { clearingS: 40, times: 3 },
    } as const;
    expect(describePlan(planProcess({ ...hut, dilution: "1+2", baths }))).toEqual([
      "Take care: The wash is shorter than 20 min. Fixer left in the gelatin stains and fades the image.",
      "Always: Wear gloves and glasses. Keep the baths away from food.",
      "Always: Let in fresh air. Stop and fixing baths give off vapours.",
      "Always: An acid stop is 1 to 2 % acetic or citric acid. Pour acid into water. " +
        "Never take glacial acid or 25 % essence as it comes.",
      "Always: Used fixing bath holds silver. Keep it apart and hand it in where your local code says.",
      "Always: Local codes and safety data sheets go before this plan.",
      "0:00 develop, 8:30 at 20.0 °C",
      "  0:00 Pour in the developer.",
      "  0:00 Invert the tank for 30 s.",
      "  0:30 Tap out the bubbles.",
      "  1:00 Invert the tank for 5 s. Every 1:00 until 8:00.",
      "  8:20 Pour out and drain: this takes 10 s.",
      "8:30 stop, 0:30 at 20.0 °C",
      "  8:30 Pour in the stop bath.",
      "  8:30 Invert the tank for 20 s.",
      "  8:50 Pour out and drain: this takes 10 s.",
      "9:00 fix, 2:00 at 20.0 °C",
      "  9:00 Pour in the fixing bath.",
      "  9:00 Invert the tank for 15 s.",
      "  10:00 Invert the tank for 5 s.",
      "  10:05 The lid may come off for a look.",
      "  10:05 It should be clear by now. If it is milky, keep it dark until it is clear, then fix for as long again.",
      "  10:50 Pour the fixing bath back into its bottle and drain: this takes 10 s.",
      "11:00 wash, 8:20 at 18.5 °C",
      "  11:00 Fill with fresh water.",
      "  11:00 Leave it in the water.",
      "  14:00 Change the water. Every 3:00 until 17:00.",
      "In all 19:20.",
      "Have ready: developer 1+2 500 ml (167 ml stock, 333 ml water); stop bath 1+19 500 ml (25 ml stock, 475 ml water); fixing bath 500 ml; wash water 1500 ml.",
    ]);
  });

  it("puts stops and warnings first, then the bench once, then the steps and the notes", () => {
    const baths = { stop: { kind: "acid" }, fix: { kind: "plain", temperatureC: 8 }, wash: {} } as const;
    const plan = planProcess({ ...hut, baths });
    const lines = describePlan(plan);
    const at = (start: string): readonly number[] =>
      lines.flatMap((line, i) => (line.startsWith(start) ? [i] : []));
    const of = (severity: string): number =>
      plan.cautions.filter((caution) => caution.severity === severity).length;
    const [stops, warnings, notes, always] = ["Stop:", "Take care:", "Note:", "Always:"].map(at);
    expect([stops!.length, warnings!.length, notes!.length]).toEqual([of("stop"), of("warn"), of("note")]);
    expect([of("stop"), of("warn"), of("note")].every((count) => count > 0)).toBe(true);
    const steps = lines.findIndex((line) => line.startsWith("0:00"));
    // Gloves are of no use when they are read at the end.
    expect([...stops!, ...warnings!, ...always!]).toEqual(Array.from({ length: steps }, (_, i) => i));
    expect(always).toHaveLength(plan.benchNotes.length);
    expect(Math.min(...notes!)).toBeGreaterThan(lines.findIndex((line) => line.startsWith("In all")));
    // No pointer into data on a sheet for the wall.
    expect(lines.some((line) => /\[?\/baths/.test(line))).toBe(false);
    expect(new Set(lines.filter((line) => !indented(line))).size).toBe(
      lines.filter((line) => !indented(line)).length,
    );
  });

  it("says first that the answer is refused", () => {
    const answer = compensate({ timeS: 510, temperatureC: 20, hydroquinone: true }, { temperatureC: 11 });
    const { timeS, ...rest } = hut;
    expect(timeS).toBe(510);
    const plan = planProcess({ ...rest, temperatureC: 11, answer });
    expect(describePlan(plan)[0]).toBe(`Stop: ${planTexts.refused(false)}`);
    // Where the reason is one of the plan's cautions, it is below.
    const stopped = { ...plan, cautions: [...answer.cautions, ...plan.cautions] };
    // There is no time to develop for, so none is read off the wall.
    expect(describePlan(stopped).filter((line) => /^ *\d+:\d\d |^In all|^Have ready/.test(line))).toEqual([]);
    expect(describePlan(stopped).some((line) => line.startsWith("Always:"))).toBe(true);
    expect(describePlan(stopped)[0]).toBe(`Stop: ${planTexts.refused(true)}`);
    expect(planTexts.refused(true)).not.toBe(planTexts.refused(false));
  });
  it("says each sentence once, whatever its places", () => {
    const plan = planProcess({ ...hut, temperatureC: 14 });
    const twice = plan.cautions.flatMap((one) => [one, { ...one, path: "/elsewhere" }]);
    expect(twice.length).toBeGreaterThan(1);
    expect(describePlan({ ...plan, cautions: twice })).toEqual(describePlan(plan));
  });

  it.each([
    [7.5, "Every 7.5 s until 1:23."],
    [15, "Every 0:15 until 1:15."],
    [100 / 7, "Every 14.29 s until 1:11."],
  ])("gives an interval of %d s as it is", (everyS, words) => {
    const lines = describePlan(planProcess({ ...hut, timeS: 100, agitation: { everyS } }));
    expect(lines.find((line) => line.includes("Every"))).toContain(words);
  });
  it("gives a whole interval where only the sum of its beats is not", () => {
    const plan = planProcess({ ...hut, rest: 0.1, agitation: { everyS: 30 } });
    expect(describePlan(plan).find((line) => line.includes("Every"))).toContain("Every 0:30 until");
  });

  const plan = planProcess(hut);
  it.each<[string, ProcessMaterial, string]>([
    [
      "stock and water",
      { name: "developer", volumeMl: 500, stockMl: 50, waterMl: 450 },
      "Have ready: developer 500 ml (50 ml stock, 450 ml water).",
    ],
    [
      "two stocks",
      { name: "developer", volumeMl: 500, stockMl: 150, waterMl: 350, stocksMl: [100, 50] },
      "Have ready: developer 500 ml (100 ml + 50 ml stock, 350 ml water).",
    ],
    [
      "stocks that are not told apart",
      { name: "developer", volumeMl: 500, stockMl: 150, waterMl: 350, stocksMl: [] },
      "Have ready: developer 500 ml (150 ml stock, 350 ml water).",
    ],
    ["stock alone", { name: "developer", volumeMl: 500, stockMl: 50 }, "Have ready: developer 500 ml."],
    ["water alone", { name: "developer", volumeMl: 500, waterMl: 450 }, "Have ready: developer 500 ml."],
    ["no volume", { name: "developer", dilution: "1+9" }, "Have ready: developer 1+9."],
    [
      "what a cup shows",
      { name: "developer", volumeMl: 500, stockMl: 9.804, waterMl: 490.196 },
      "Have ready: developer 500 ml (9.8 ml stock, 490 ml water).",
    ],
    [
      "a few drops",
      { name: "developer", volumeMl: 1125, stockMl: 0.4567, waterMl: 1124.5433 },
      "Have ready: developer 1125 ml (0.46 ml stock, 1120 ml water).",
    ],
  ])("tells a mixture only where both parts are there: %s", (_, material, line) => {
    expect(describePlan({ ...plan, materials: [material] })).toContain(line);
  });
});

describe("another language", () => {
  // What a catalogue is given, as text: no English passes through.
  const codes: PlanTexts = {
    ...planTexts,
    steps: Object.fromEntries(Object.keys(planTexts.steps).map((name) => [name, `<${name}>`])) as never,
    materials: Object.fromEntries(Object.keys(planTexts.materials).map((name) => [name, "<m>"])) as never,
    cautions: {
      severities: { stop: "<stop>", warn: "<warn>", note: "<note>" },
      sentences: Object.fromEntries(Object.keys(processSentences).map((code) => [code, () => `<${code}>`])),
    },
    cue: (cue, place) => `<${cue.do} ${place.step} ${place.vessel} ${cue.durationS ?? ""}>`,
    step: (name) => name,
    repeated: (everyS) => `<every ${everyS}>`,
    total: (totalS) => `<total ${totalS}>`,
    volume: (volumeMl) => `<${volumeMl} ml>`,
    ready: "<ready>",
    stock: "<stock>",
    water: "<water>",
    bench: "<bench>",
    refused: () => "<refused>",
  };
  it("takes every sentence of this module from the catalogue", () => {
    const baths = { preSoak: {}, stop: { dilution: "1+9", kind: "acid" }, fix: { kind: "plain" } } as const;
    const plan = { ...planProcess({ ...hut, timeS: 5, rest: true, baths }), timeRefused: true };
    const lines = describePlan(plan, codes);
    expect(lines.filter((line) => !/^(<|\s+\d)/.test(line))).toEqual([]);
    expect(lines.join(" ").replace(/<[^>]*>/g, "")).not.toMatch(/[A-Za-z]{3}/);
    expect(lines).toContain("<note>: <clearing-assumed>");
    expect(lines).toContain("<stop>: <drain-too-long>");
  });
  it("leaves the sentence of a caution that another module wrote", () => {
    const plan = planProcess({ ...hut, temperatureC: 14 });
    const { message } = plan.cautions.find(({ code }) => code === "temperature-unusual")!;
    expect(describePlan(plan, codes)).toContain(`<warn>: ${message}`);
  });
  it("gets the numbers of each caution", () => {
    // Every caution's message is its sentence over its own data.
    const cold = { temperatureC: 8, kind: "plain", clearingS: 90, freshClearingS: 40 } as const;
    const plans: readonly ProcessPlan[] = [
      planProcess({ ...hut, timeS: 5 }),
      planProcess({ ...hut, stepS: 200 }),
      planProcess({
        vessel: "tank",
        answer: compensate({ timeS: 1e6, temperatureC: 20 }, { temperatureC: 10 }),
      }),
      planProcess({ ...hut, temperatureC: 10, baths: { fix: { ...cold, durationS: 700, kind: "rapid" } } }),
      planProcess({ ...hut, emulsion: "soft", baths: { stop: { kind: "acid" }, fix: cold, wash: {} } }),
      planProcess({
        ...hut,
        areaCm2: 500,
        baths: { fix: { usedCm2PerL: 10000 }, wash: { method: "changes" } },
      }),
      planProcess({ ...hut, baths: { fix: { usedCm2PerL: 20000, clearingS: 9, durationS: 10 } } }),
      planProcess({ ...hut, material: "plate", baths: { wash: { method: "changes" } } }),
      planProcess({ ...hut, temperatureC: 10 }),
      planProcess({
        vessel: "tank",
        temperatureC: 14,
        agitation: "stand",
        dilution: "1+19",
        answer: compensate(
          { timeS: 510, temperatureC: 20, agitation: { everyS: 60 }, dilution: "1+9" },
          { agitation: { everyS: 30 }, dilution: "stock" },
        ),
      }),
      planProcess({
        ...hut,
        vessel: "drum",
        agitation: "stand",
        emulsion: "soft",
        baths: { fix: cold, wash: { durationS: 4000 } },
      }),
      planProcess({ ...hut, material: "paper", baths: { fix: { durationS: 20 }, wash: {} } }),
      planProcess({ ...hut, carbonate: true, baths: { stop: {}, fix: {}, wash: { durationS: 60 } } }),
      replaceDevelopment(planProcess(hut), { atS: 300, remainingS: 3 }),
      planRecipe(
        {
          schemaVersion: 2,
          material: { name: "film" },
          developer: { kind: "stock", name: "hut stock", dilution: "1+9" },
          baseline: { timeS: 540, temperatureC: 20, agitation: { everyS: 60 } },
        },
        { vessel: "drum" },
      ),
    ];
    const seen = new Set<string>();
    for (const { cautions, benchNotes } of plans)
      for (const one of [...cautions, ...benchNotes]) {
        if (!Object.hasOwn(processSentences, one.code)) continue;
        seen.add(one.code);
        const sentence = processSentences[one.code as keyof typeof processSentences] as (
          facts: object,
          unit: string,
        ) => string;
        expect(one.message).toBe(sentence({ data: {}, ...one }, "C"));
        expect(one.message).not.toMatch(/NaN|undefined|\b0 s\b|\b0\.0\b/);
        expect(one.message.split(". ").every((sentence) => sentence.split(" ").length <= 25)).toBe(true);
      }
    expect([...seen].sort()).toEqual(Object.keys(processSentences).sort());
  });
});

describe("the English catalogue", () => {
  const actions = [
    ...["pour-in", "tap", "agitate", "stand", "pour-out", "rinse", "check-clear", "fill", "run-water"],
    ...["change-water", "hang-up", "light-off", "light-on", "top-up", "temper"],
  ] as const;
  it("has a sentence for every action, caution and vessel, even where a store lost the data", () => {
    const said: string[] = Object.values(processSentences).map((sentence) =>
      (sentence as (facts: object, unit: string) => string)({ data: {} }, "C"),
    );
    for (const vessel of ["tank", "tray", "drum"] as const)
      for (const step of Object.keys(planTexts.steps) as (keyof typeof planTexts.steps)[])
        for (const action of actions) said.push(planTexts.cue({ do: anyOf(action) }, { step, vessel }, "C"));
    expect(said.length).toBeGreaterThan(300);
    expect(said.filter((sentence) => !/^[A-Z0-9?][^]*\.$/.test(sentence) || /NaN/.test(sentence))).toEqual(
      [],
    );
  });
});

describe("a plan that comes back in", () => {
  const plan = planProcess({ ...hut, dilution: "1+2", baths: { stop: {} } });
  const step = plan.steps[0]!;
  const cue = step.cues[0]!;
  const material = plan.materials[0]!;
  const withStep = (change: object): object => ({ ...plan, steps: [{ ...step, ...change }] });
  const withCue = (change: object): object => withStep({ cues: [{ ...cue, ...change }] });
  const withMaterial = (change: object): object => ({ ...plan, materials: [{ ...material, ...change }] });
  it("is read as it was written", () => {
    const stored = JSON.parse(JSON.stringify(plan)) as typeof plan;
    expect(describePlan(stored)).toEqual(describePlan(plan));
    expect(replaceDevelopment(stored, { atS: 100, remainingS: 60 })).toEqual(
      replaceDevelopment(plan, { atS: 100, remainingS: 60 }),
    );
  });
  it.each<[string, unknown, string]>([
    ["text", "plan", "TypeError /plan wrong-type"],
    ["a total in words", { ...plan, totalS: "long" }, "TypeError /plan/totalS wrong-type"],
    ["a total of months", { ...plan, totalS: 1e7 + 1 }, "RangeError /plan/totalS out-of-range"],
    ["no steps", { ...plan, steps: "" }, "TypeError /plan/steps empty"],
    ["a step of null", { ...plan, steps: [null] }, "TypeError /plan/steps/0 missing"],
    ["a name of 1", withStep({ name: 1 }), "TypeError /plan/steps/0/name wrong-type"],
    ["another name", withStep({ name: "dry" }), "RangeError /plan/steps/0/name not-one-of"],
    ["a start before", withStep({ startS: -1 }), "RangeError /plan/steps/0/startS out-of-range"],
    ["no end", withStep({ endS: undefined }), "TypeError /plan/steps/0/endS missing"],
    ["an end before the start", withStep({ endS: -50 }), "RangeError /plan/steps/0/endS out-of-range"],
    [
      "a step before the one ahead has ended",
      { ...plan, steps: [step, { ...plan.steps[1], startS: step.endS - 1 }] },
      "RangeError /plan/steps/1/startS out-of-range",
    ],
    [
      "steps in another order",
      { ...plan, steps: [...plan.steps].reverse() },
      "RangeError /plan/steps/0/startS out-of-range",
    ],
    ["no length", withStep({ durationS: NaN }), "RangeError /plan/steps/0/durationS not-a-number"],
    ["steam", withStep({ temperatureC: 101 }), "RangeError /plan/steps/0/temperatureC out-of-range"],
    ["no sources", withStep({ sources: NaN }), "TypeError /plan/steps/0/sources wrong-type"],
    ["cues of an object", withStep({ cues: {} }), "TypeError /plan/steps/0/cues wrong-type"],
    ["a cue of 7", withStep({ cues: [7] }), "TypeError /plan/steps/0/cues/0 wrong-type"],
    ["a cue before", withCue({ atS: -1 }), "RangeError /plan/steps/0/cues/0/atS out-of-range"],
    ["a cue backwards", withCue({ durationS: -1 }), "RangeError /plan/steps/0/cues/0/durationS out-of-range"],
    ["another action", withCue({ do: "dance" }), "RangeError /plan/steps/0/cues/0/do not-one-of"],
    ["a cue of 5", withCue({ text: 5 }), "TypeError /plan/steps/0/cues/0/text wrong-type"],
    ["no materials", { ...plan, materials: 1 }, "TypeError /plan/materials wrong-type"],
    ["a material of 1", { ...plan, materials: [1] }, "TypeError /plan/materials/0 wrong-type"],
    ["no material name", withMaterial({ name: undefined }), "TypeError /plan/materials/0/name missing"],
    ["another material", withMaterial({ name: "tea" }), "RangeError /plan/materials/0/name not-one-of"],
    [
      "a volume below 0",
      withMaterial({ volumeMl: -1 }),
      "RangeError /plan/materials/0/volumeMl out-of-range",
    ],
    ["a dilution of 2", withMaterial({ dilution: 2 }), "TypeError /plan/materials/0/dilution wrong-type"],
    ["stock of null", withMaterial({ stockMl: null }), "TypeError /plan/materials/0/stockMl missing"],
    ["a lake", withMaterial({ waterMl: 2e9 }), "RangeError /plan/materials/0/waterMl out-of-range"],
    ["stocks of 5", withMaterial({ stocksMl: 5 }), "TypeError /plan/materials/0/stocksMl wrong-type"],
    [
      "a stock below 0",
      withMaterial({ stocksMl: [5, -1] }),
      "RangeError /plan/materials/0/stocksMl/1 out-of-range",
    ],
    ["no cautions", { ...plan, cautions: "" }, "TypeError /plan/cautions empty"],
    ["a caution of 1", { ...plan, cautions: [1] }, "TypeError /plan/cautions/0 wrong-type"],
    [
      "a caution without a sentence",
      { ...plan, cautions: [{ severity: "stop" }] },
      "TypeError /plan/cautions/0/message missing",
    ],
    [
      "a grave note",
      { ...plan, benchNotes: [{ severity: "dire", message: "" }] },
      "RangeError /plan/benchNotes/0/severity not-one-of",
    ],
    ["no word of refusal", { ...plan, timeRefused: undefined }, "TypeError /plan/timeRefused missing"],
    ["a handling of 1", { ...plan, handling: 1 }, "TypeError /plan/handling wrong-type"],
  ])("is refused with %s", (_, given, fault) => {
    const [kind, ...where] = fault.split(" ");
    const of = (name: string): string => `${kind} ${name} ${where.join(" ")}`;
    expect(refusal(() => describePlan(anyOf(given)))).toBe(of("describePlan"));
    expect(refusal(() => replaceDevelopment(anyOf(given), { atS: 0, remainingS: 1 }))).toBe(
      of("replaceDevelopment"),
    );
  });
});

describe("describePlan", () => {
  const plan = planProcess({ vessel: "tank", timeS: 540, temperatureC: 20, volumeMl: 500 });
  /** The same data with one value put in its place, as an editor leaves it. */
  function edited<T>(data: T, path: string, value: unknown): T {
    const copy = structuredClone(data);
    const names = path.split("/").slice(1);
    const last = names.pop()!;
    let holder = copy as Record<string, unknown>;
    for (const name of names) holder = holder[name] as Record<string, unknown>;
    holder[last] = value;
    return copy;
  }
  it("says a movement that no plan has in plain words", () => {
    const turned = edited(plan, "/steps/0/cues/1/movement", "twirl");
    expect(describePlan(turned).join("\n")).toContain("Move it for 30 s.");
  });
});
