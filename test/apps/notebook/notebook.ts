// A notebook: a page of runs as people write them, what they teach, the next test, and a recipe that keeps it. All of it invented.
import {
  checkRecipe,
  compensateRecipe,
  formatRecipe,
  formatTime,
  learn,
  nextTest,
  predict,
  readRunNotes,
  startKnowledge,
  tidyRuns,
  type Recipe,
} from "darkroom-kinetics";

const page = [
  { Date: "2026-05-01", Time: "8:30", Temp: "20 °C", Dilution: "1+9", Outcome: "perfect" },
  { Date: "2026-05-01", Time: "9:30", Temp: "18 °C", Dilution: "1+9", Outcome: "good" },
  { Date: "2026-05-02", Time: "12 min", Temp: "14 °C", Dilution: "1+9", Outcome: "too thin" },
  { Date: "2026-05-02", Time: "8 1/2 min", Temp: "20 °C", Dilution: "1+14", Outcome: "under 1" },
  { Date: "2026-05-03", Time: "10:00", Temp: "20 °C", Dilution: "1:9", Outcome: "good" },
];
const { runs, rejected } = readRunNotes(page);
const before = startKnowledge({ timeS: 510, temperatureC: 20, dilution: "1+9", logSd: 0.2 });
const after = learn(before, runs);
const tonight = { temperatureC: 14, dilution: "1+14" };
const [first] = nextTest(after, [{ temperatureC: 14 }, { dilution: "1+14" }, tonight], tonight);
const recipe: Recipe = {
  schemaVersion: 2,
  name: "Hut plates",
  material: { name: "dry plate", kind: "plate" },
  developer: { kind: "stock", name: "hut stock", dilution: "1+9" },
  baseline: after.baseline,
  knowledge: after,
};
const loaded = checkRecipe(formatRecipe(recipe));
const kept = loaded.ok ? compensateRecipe(loaded.recipe, tonight) : undefined;
const told = predict(after, tonight);
console.log(
  JSON.stringify({
    read: runs.length,
    rejected: rejected.map(({ row, problems }) => ({ row, problems })),
    before: predict(before, tonight),
    after: told,
    shown: formatTime(told.timeS),
    first: first?.candidate,
    kept,
    rows: tidyRuns(after),
  }),
);
