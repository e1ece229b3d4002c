/*
 * Whatever a public function returns is plain data: it comes back the same from JSON and from structuredClone, and the functions that
 * take such a value take it back and answer the same. The arguments are those of the fuzz.
 */
import { describe, expect, it } from "vitest";
import * as library from "../../src/index.js";
import { costly, valid } from "../fuzz/valid.mjs";
import { fc } from "../property.js";

type Call = (...given: readonly unknown[]) => unknown;
const functions = (Object.entries(library) as [string, unknown][]).filter(
  (entry): entry is [string, Call] => typeof entry[1] === "function",
);
/** What returns no value that can be stored, and why. */
const unstored: Readonly<Record<string, string>> = {
  newtonDrift: "a function, for charts; its drift is the data",
  rateFunction: "a function, for charts and hot loops",
  prepareCompensation: "functions, for hot loops",
};

type Value = Readonly<Record<string, unknown>>;
type Take = (value: never) => unknown;
const take = (consumer: Take): Take => consumer;

/** What takes the value that a function returns; several where several do. */
const taken: Readonly<Record<string, readonly Take[]>> = {
  parseTemperature: [take((c: number) => library.formatTemperature(Math.max(-273.15, Math.min(5500, c))))],
  parseDilution: [
    take(library.formatDilution),
    take((one: library.Dilution) => library.mixVolumes(one, 500)),
  ],
  parseAgitation: [take((one: library.Agitation) => library.agitationFactor("continuous", one))],
  roundEstimate: [take((one: library.TimeEstimate) => library.roundEstimate(one))],
  combineEstimates: [take((one: library.TimeEstimate) => library.combineEstimates(one, one))],
  appearanceEstimate: [take((one: library.TimeEstimate) => library.combineEstimates(one, one))],
  ...Object.fromEntries(
    ["asArrheniusLaw", "asCoefficientLaw", "handbookTemperatureLaw"].map((name) => [
      name,
      [take((law: library.TemperatureLaw) => library.temperatureFactor(20, 21, law))],
    ]),
  ),
  fitTemperatureLaw: [
    take(({ law }: library.FittedTemperatureLaw) => library.temperatureFactor(20, 21, law)),
  ],
  fitDilutionLaw: [take(({ law }: library.FittedDilutionLaw) => library.dilutionFactor("1+9", "1+10", law))],
  handbookDilutionLaw: [take((law: library.DilutionLaw) => library.dilutionFactor("1+9", "1+10", law))],
  handbookUseLaw: [take((law: library.UseLaw) => library.useFactor(0, 100, law))],
  fitGrowth: [take(({ law }: library.FittedGrowth) => library.gammaAt(300, law))],
  growthFromDoubling: [take((law: library.GrowthLaw) => library.gammaAt(300, law))],
  handbookVessel: [
    take(({ timeConstantS, logSd }: library.HandbookVessel) =>
      library.steer({
        baseline: { timeS: 510, temperatureC: 20 },
        conditions: {},
        log: [{ timeS: 0, temperatureC: 20 }],
        vessel: { timeConstantS, logSd },
      }),
    ),
  ],
  compensate: [take(library.describeCompensation), take(library.roundEstimate)],
  compensateRecipe: [take(library.describeCompensation)],
  learnRecipe: [take((recipe: library.Recipe) => library.checkRecipe(recipe).ok)],
  predict: [take(library.describeCompensation)],
  bathState: [take((one: library.DeveloperBath) => library.bathVerdict(one))],
  checkLedger: [
    take((check: library.CheckedLedger) => (check.ok ? library.checkLedger(check.ledger) : undefined)),
  ],
  checkPlan: [take((check: library.PlanCheck) => (check.ok ? library.planAt(check.plan, 10) : undefined))],
  checkLog: [take((check: library.LogCheck) => (check.ok ? library.checkLog(check.log) : undefined))],
  checkKnowledge: [
    take((check: library.KnowledgeCheck) => (check.ok ? library.checkKnowledge(check.knowledge) : undefined)),
  ],
  checkRecipe: [
    take((check: library.RecipeCheck) =>
      check.ok ? [library.checkRecipe(check.recipe).ok, library.compensateRecipe(check.recipe)] : undefined,
    ),
  ],
  formatRecipe: [take((text: string) => library.checkRecipe(text).ok)],
  startKnowledge: [take((known: library.LearnedKnowledge) => library.checkKnowledge(known).ok)],
  learn: [
    take((known: library.LearnedKnowledge) => library.learn(known, [])),
    take((known: library.LearnedKnowledge) => library.checkKnowledge(known).ok),
    take(library.tidyRuns),
  ],
  mergeKnowledge: [take((known: library.LearnedKnowledge) => library.checkKnowledge(known).ok)],
  readRunNotes: [
    take(({ runs }: library.RunNotes) =>
      runs.length === 0 ? undefined : library.checkKnowledge(library.learn(known, runs)).ok,
    ),
  ],
  planProcess: [take(library.describePlan), take((plan: library.ProcessPlan) => library.planAt(plan, 10))],
  planRecipe: [take(library.describePlan), take((plan: library.ProcessPlan) => library.planAt(plan, 10))],
  planEvening: [
    take(library.describeEvening),
    take(({ plates }: library.EveningPlan) => plates.map(({ plan }) => library.describePlan(plan))),
  ],
  replaceDevelopment: [take(library.describePlan)],
  usualVessel: [
    take((vessel: library.ProcessVessel) => library.planProcess({ vessel, timeS: 510, temperatureC: 20 })),
  ],
  brewStrength: [
    take((strength: library.Strength) => library.compensate({ timeS: 510, temperatureC: 20 }, { strength })),
  ],
  scaleBrew: [take((brew: library.DeveloperBrew) => library.mixingSteps(brew))],
  proposeBrew: [
    take((one: library.ProposedBrew | library.NoBrew) =>
      one.brew === undefined ? undefined : library.checkBrew(one.brew),
    ),
  ],
  timeChart: [take(library.describeChart), take(library.chartCsv), take(library.chartSvg)],
  chartRecipe: [take(library.describeChart)],
  checkBrew: [take(library.describeCautions)],
  parseTime: [take((timeS: number) => library.formatTime(timeS))],
  parseVolume: [take((volumeMl: number) => library.mixVolumes("1+9", volumeMl))],
  parseUse: [take((used: number) => library.compensate(hut, { usedCm2PerL: used }))],
  parseDate: [
    take((date: string) =>
      library.learn(known, [{ date, timeS: 540, temperatureC: 20, outcome: { kind: "good" } }]),
    ),
  ],
  parseOutcome: [
    take((outcome: library.RunOutcome) => library.learn(known, [{ timeS: 540, temperatureC: 20, outcome }])),
  ],
  parseAge: [take((ageH: number) => library.compensate(hut, { ageH }))],
  fitDrift: [take((drift: library.FittedDrift) => library.newtonDrift(drift)(600))],
  parseStops: [take((pushStops: number) => library.compensate(hut, { pushStops }))],
  pushCautions: [take(library.describeCautions)],
  safelightCautions: [take(library.describeCautions)],
  isoSpeed: [take(({ cautions }: library.IsoSpeed) => library.describeCautions(cautions))],
  strengthFromScrap: [take((strength: library.ScrapStrength) => library.compensate(hut, { strength }))],
  mixingSteps: [take((steps: readonly library.MixingStep[]) => library.describeMixing(steps))],
  checkConditions: [
    take((check: library.ConditionsCheck) =>
      check.ok
        ? library.describeCautions(check.cautions)
        : check.problems.map((one) => library.describeProblem(one)),
    ),
  ],
  lawsOf: [take((laws: library.Knowledge) => library.startKnowledge(hut, { laws }))],
  tableRecords: [
    take((rows: readonly Readonly<Record<string, string>>[]) => library.readRunNotes(rows).runs.length),
  ],
  stripOutcome: [
    take((outcome: library.RunOutcome) => library.learn(known, [{ timeS: 540, temperatureC: 20, outcome }])),
  ],
  testStripTimes: [
    take((strip: library.TestStrip) =>
      strip.timesS[0] === undefined ? undefined : library.stripOutcome(strip, strip.timesS[0]),
    ),
  ],
  steer: [take((answer: library.SteerAnswer) => library.describeSteering(answer))],
  answerPicture: [take(library.describePicture), take(library.pictureLayout)],
  pictureAfterStrip: [take(library.describePicture)],
  recipePicture: [take(library.describePicture)],
  recipeQuestion: [
    take(({ baseline, conditions, knowledge }: library.RecipeQuestion) =>
      library.checkConditions(baseline, conditions, knowledge),
    ),
  ],
  formatFilmArea: [take(library.parseFilmFormat)],
  problemOf: [take(library.describeProblem)],
  logCautions: [take(library.describeCautions)],
  stockCautions: [take(library.describeCautions)],
  bathCautions: [take(library.describeCautions)],
  temperatureCautions: [take(library.describeCautions)],
};
/** Functions whose values no function takes as they are, by what their values are. */
const untaken: Readonly<Record<string, readonly string[]>> = {
  "a number": [
    "fahrenheitToCelsius",
    "celsiusToFahrenheit",
    "parseCount",
    "parseSpread",
    "roundTime",
    "filmAreaCm2",
    "temperatureFactor",
    "temperatureCoefficient",
    "equivalentTime",
    "developUntil",
    "ownUseFactor",
    "dilutionFactor",
    "agitationFactor",
    "useFactor",
    "ageFactor",
    "pushFactor",
    "contrastFactor",
    "appearanceFactor",
    "mixedAppearanceFactor",
    "timeFromAppearance",
    "bathVolumeMl",
    "replenishmentMl",
    "gammaAt",
    "timeForGamma",
    "speedPoint",
    "averageGradient",
    "contrastIndex",
    "sodaMass",
    "solubility",
    "fixingTime",
    "clearingTimeAt",
  ],
  "text to read": [
    "formatTime",
    "formatSpread",
    "formatTemperature",
    "formatDilution",
    "describePlan",
    "describeEvening",
    "describeSteering",
    "describeCompensation",
    "describeFactor",
    "describeCaution",
    "describeCautions",
    "describeProblem",
    "describeProblems",
    "describeMixing",
    "describePicture",
    "describeChart",
    "chartSvg",
    "chartCsv",
    "pictureSvg",
  ],
  "figures to read": [
    "startTemperatureFor",
    "steeringGoal",
    "mixVolumes",
    "parseFilmFormat",
    "remainingTime",
    "bathCapacity",
    "bathVerdict",
    "handbookAppearanceFactor",
    "massOf",
    "spoonsFor",
    "roundSpoons",
    "bakeYield",
    "bakeProgress",
    "bakedSoda",
    "bakeTime",
    "brewPh",
    "brewLife",
    "brewCapacity",
    "effect",
    "temperatureCurve",
    "nextTest",
    "tidyRuns",
    "planAt",
    "judgeReading",
    "pictureLayout",
  ],
  "true or false": ["isInputError"],
};
/** A hut, all invented. */
const hut = { timeS: 540, temperatureC: 20 };
const known = library.startKnowledge({
  timeS: 510,
  temperatureC: 20,
  dilution: "1+9",
  agitation: { everyS: 60 },
});

/** Fields without a value are fields that are not there: JSON has none of them. */
function bare(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(bare);
  if (typeof value !== "object" || value === null) return value === 0 ? 0 : value;
  return Object.fromEntries(
    Object.entries(value as Value).flatMap(([name, part]) =>
      part === undefined ? [] : [[name, bare(part)]],
    ),
  );
}
/** Text that holds half a letter, and what a caller handed in as it was, are the caller's own. */
const own = (name: string): boolean => name === "readRunNotes" || name === "checkRecipe";

/** Declares the tests, with about so many calls of each function. */
export function valuesAreStored(calls: number): void {
  describe("what a public function returns", () => {
    it.each(functions.filter(([name]) => !(name in unstored)))(
      "survives JSON and structuredClone, and is taken back: %s",
      (name, call) => {
        let values = 0;
        const numRuns = Math.max(12, Math.round(calls * Math.min(1, (costly[name] ?? 1) * 2)));
        fc.assert(
          fc.property(valid[name]!, (given) => {
            let value: unknown;
            try {
              value = call(...given);
            } catch (error) {
              // Right kinds of arguments that do not go together; the fuzz judges how they are refused.
              if (library.isInputError(error)) return;
              throw error;
            }
            values += 1;
            const written = JSON.stringify(value) as string | undefined;
            if (written === undefined) return;
            const stored = JSON.parse(written) as unknown;
            if (!own(name)) expect(stored).toEqual(bare(value));
            const cloned = structuredClone(value);
            expect(cloned).toEqual(value);
            for (const again of taken[name] ?? []) {
              const answer = bare(again(value as never));
              expect(bare(again(stored as never))).toEqual(answer);
              expect(bare(again(cloned as never))).toEqual(answer);
            }
          }),
          { numRuns },
        );
        expect(values).toBeGreaterThan(0);
      },
    );

    it("has arguments, and a place in one of the lists, for every function", () => {
      const names = functions.map(([name]) => name);
      const lists = [
        unstored,
        taken,
        ...Object.values(untaken).map((list) => Object.fromEntries(list.map((one) => [one, one]))),
      ];
      const places = (name: string): number => lists.filter((list) => name in list).length;
      expect(names.filter((name) => valid[name] === undefined)).toEqual([]);
      expect(names.filter((name) => places(name) !== 1)).toEqual([]);
      const listed = lists.flatMap((list) => Object.keys(list));
      expect([...listed, ...Object.keys(valid)].filter((name) => !names.includes(name))).toEqual([]);
    });
  });
}
