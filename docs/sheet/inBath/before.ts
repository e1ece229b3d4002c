/* Before it is poured in: what to take care of, and the button that starts the clock. */
import { appearanceAgents, handbookAppearanceFactor, type Recipe } from "darkroom-kinetics";
import type { Answer } from "../answer.js";
import { pouredIn, type Followed, type PlannedBath } from "../bath.js";
import { bathWordsOf } from "../bathWords.js";
import { cautionText, staleText } from "../catalogue.js";
import { button, el, say } from "../dom.js";
import { shownAt } from "../run.js";
import { knownKey, type Store } from "../sheet.js";
import { lines, type Control } from "./control.js";
import { countedPart } from "./counted.js";
import { readyText } from "./said.js";
import { airPart, dishPart, placePart, type Part } from "./place.js";
import { wake } from "./signal.js";

/** Before the clock starts where nothing is to be seen, ms: time to put the phone away. */
const LEAD_MS = 10_000;

/** What is followed, by the sheet as it is now. */
export function followedBy({ sheet, answer }: Store): Followed {
  const { baseline, conditions, knowledge, recipe } = answer;
  const { bath, before: _, ...known } = sheet;
  const { material, developer } = recipe;
  const agent = appearanceAgents.find((one) => one === sheet.developer);
  const published = agent && handbookAppearanceFactor(agent);
  return {
    baseline,
    conditions,
    knowledge,
    stepS: answer.rounded?.stepS,
    volumeMl: developer.kind === "brew" ? developer.brew.volumeMl : developer.volumeMl,
    areaCm2: material.areaCm2,
    ambientC: bath?.ambientC,
    planned: plannedOf(recipe, answer),
    appearance: published && { factor: published.factor, logSd: published.logSd },
    known: { key: knownKey(answer), sheet: known },
  };
}

/** What the recipe of the sheet says of its plan. */
function plannedOf(
  { material, developer, baths }: Recipe,
  { baseline, conditions, knowledge }: Answer,
): PlannedBath {
  const { kind, iodideRich, sensitization, pieces } = material;
  const { capacityCm2PerL } = developer;
  return {
    ...{ material: kind, emulsion: baseline.emulsion, iodideRich, sensitization, pieces, baths },
    developer: {
      capacityCm2PerL,
      use: knowledge.use,
      usedCm2PerL: conditions.usedCm2PerL,
      ...(developer.kind === "brew"
        ? { brew: developer.brew }
        : { family: developer.family, leastMlPerRoll: developer.leastMlPerRoll }),
    },
  };
}

/** Why there is nothing to follow; no text where there is a time that holds. */
export function notFollowed({ sheet, answer }: Pick<Store, "sheet" | "answer">): string {
  return answer.rounded === undefined ? bathWordsOf(sheet.language).nothing : staleText({ sheet, answer });
}

const ofBaths = (path = ""): boolean => path.startsWith("/baths");

/** The part before pour-in; `poured` is called when it was pressed. */
export function beforePart(control: Control, poured: () => void): Part {
  const { store, words, bath, set } = control;
  const where = placePart(control);
  const dish = dishPart(control);
  const air = airPart(control);
  const counted = countedPart(control);
  const nothing = el("p", { class: "nothing" });
  const care = el("ul", { class: "care" });
  const ready = el("p", { class: "said" });
  const lead = el("p", { class: "lead" });
  const pour = button(
    "",
    () => {
      const { place } = bath();
      wake();
      const startedMs = Date.now() + (place === "dark" ? LEAD_MS : 0);
      set({ run: pouredIn(followedBy(store), startedMs), black: place === "dark" });
      poured();
    },
    { id: "pour-in", class: "main" },
  );
  return {
    element: el(
      "div",
      { class: "before" },
      where.element,
      counted.element,
      nothing,
      dish.element,
      air.element,
      care,
      ready,
      lead,
      pour,
    ),
    update: () => {
      where.update();
      counted.update();
      dish.update();
      air.update();
      const { place, sound, buzz } = bath();
      const why = notFollowed(store);
      const answered = why === "";
      say(nothing, why);
      nothing.hidden = answered;
      pour.hidden = !answered;
      say(pour, words.pourIn[place === "tank" ? "tank" : "dish"]);
      say(lead, place !== "dark" || !answered ? "" : sound || buzz ? words.startsCalled : words.starts);
      const { plan, notes } = answered
        ? shownAt(pouredIn(followedBy(store), 0), place, 0)
        : { plan: undefined, notes: [] };
      // What is unwise about the developer of this plan, such as too little of it; the other baths come later.
      const said = new Set(store.answer.compensation.cautions.map(({ code }) => code));
      const unwise =
        plan?.cautions.filter(
          ({ code, severity, path }) => severity !== "note" && !ofBaths(path) && !said.has(code),
        ) ?? [];
      say(ready, plan === undefined ? "" : readyText(plan, store.sheet));
      lines(
        care,
        [...unwise, ...notes].map((one) => cautionText(one, store.sheet)),
      );
    },
  };
}
