import { chartRecipe, chartSvg, formatDilution } from "darkroom-kinetics";
import { chartWords, reasonText, staleText } from "../catalogue.js";
import { button, el, put, say } from "../dom.js";
import { download, opened, pageWith, recipeOf } from "../files.js";
import { onPaper } from "../paper.js";
import { frame, type MakeSection } from "../section.js";
import type { Store } from "../sheet.js";
import { wordsOf } from "../words.js";

/** The sheet on paper, and as a file. */
export const wallSection: MakeSection = (store) => {
  const words = wordsOf(store.sheet.language);
  const said = el("p", { class: "said", role: "status" });
  const json = (name: string, value: object): void => {
    download(`${name}.json`, "application/json", `${JSON.stringify(value, null, 2)}\n`);
  };
  const open = el("input", {
    type: "file",
    class: "unseen",
    accept: ".json,.html",
    change: () => {
      const [file] = open.files ?? [];
      if (file === undefined) return;
      void file.text().then((text) => {
        const answer = opened(text, store, words);
        const problem =
          "problem" in answer
            ? answer.problem
            : store.replace(answer.change)
              ? undefined
              : reasonText(store.refused, store.sheet);
        say(said, problem === undefined ? words.opened(file.name) : words.notOpened(file.name, problem));
        open.value = "";
      });
    },
  });
  /** What carries a time is not handed out while that time is not to be used. */
  const withTime = (text: string, hand: () => void): HTMLButtonElement =>
    button(text, () => {
      const stale = staleText(store);
      say(said, stale);
      if (stale === "") hand();
    });
  const learned = withTime(words.saveKnowledge, () => {
    json("knowledge", store.answer.learned ?? {});
  });
  const table = el("table", { class: "log paper" });
  const page = el("div", { class: "chart paper" });
  const buttons = el(
    "div",
    { class: "buttons" },
    withTime(words.print, () => {
      print();
    }),
    button(words.save, () => {
      download(`${words.fileName}.html`, "text/html", pageWith(store.sheet));
    }),
    withTime(words.saveRecipe, () => {
      json("recipe", recipeOf(store, words.title));
    }),
    learned,
    el("label", { class: "button" }, open, words.open),
  );
  const element = frame(
    "wall",
    words.wall,
    el("p", { class: "said" }, words.wallSays),
    buttons,
    said,
    table,
    page,
  );
  const update = (): void => {
    const name = store.sheet.texts.name.trim();
    element.hidden = store.answer.missing.length > 0;
    learned.hidden = store.answer.learned === undefined;
    table.hidden = store.answer.rounded === undefined;
    put(table, [
      el("caption", {}, words.labels(name)),
      ...[words.clock, `°${store.sheet.unit}`].map((text) =>
        el("tr", {}, el("th", { scope: "row" }, text), ...Array.from({ length: 9 }, () => el("td"))),
      ),
    ]);
    if (onPaper()) page.innerHTML = store.answer.stale ? "" : chartOf(store);
  };
  return { element, update };
};

/** Times over temperature and dilution around the known bath and today's. */
function chartOf({ answer, sheet }: Store): string {
  const { recipe, baseline, conditions } = answer;
  const name = sheet.texts.name.trim();
  const asked = [baseline.temperatureC, conditions.temperatureC];
  const from = Math.max(0, Math.floor(Math.min(...asked)) - 2);
  const to = Math.min(100, Math.ceil(Math.max(...asked)) + 2);
  const step = Math.ceil((to - from + 1) / 16);
  const temperaturesC = Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step);
  const { known, today } = { known: baseline.dilution, today: conditions.dilution };
  // A column each, and one where they are the same.
  const dilutions = [
    ...new Set([known, today].flatMap((one) => (one === undefined ? [] : [formatDilution(one)]))),
  ];
  return chartSvg(
    // The known time is the one that the runs made of it.
    chartRecipe(
      { ...recipe, baseline },
      {
        temperaturesC,
        // A brew is not diluted.
        ...(dilutions.length === 0 || recipe.developer.kind === "brew" ? {} : { dilutions }),
      },
    ),
    {
      title: name === "" ? undefined : wordsOf(sheet.language).chartTitle(name),
      texts: chartWords(sheet),
      unit: sheet.unit,
    },
  );
}
