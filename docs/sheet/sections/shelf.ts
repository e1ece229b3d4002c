/* The shelf: what is in the cupboard, a brew of it, its steps one at a time, and the brew as what is known. */
import {
  filmAreaCm2,
  formatTime,
  isInputError,
  parseTemperature,
  parseVolume,
  roundEstimate,
  roundSpoons,
  spoonSizesMl,
  type Caution,
  type Ingredient,
  type ProposedBrew,
  type SpoonedAmount,
} from "darkroom-kinetics";
import { messageOf } from "../blanks.js";
import { cautionText } from "../catalogue.js";
import { attribute, button, el, put, say, type Child } from "../dom.js";
import { frame, type MakeSection } from "../section.js";
import { fromRecipe } from "../recipe.js";
import { ingredients, proposalOf, type Proposal, type ShelfState } from "../shelf.js";
import { ingredientName, reasonText, stepText } from "../shelfSaid.js";
import { shelfWordsOf } from "../shelfWords.js";
import { wordsOf } from "../words.js";
import { grams, hours, lasting, millilitres, spoonCount } from "../figures.js";

const spoonVolumes: readonly number[] = [...new Set(Object.values(spoonSizesMl))].sort((a, b) => a - b);

/** What most cupboards hold; the rest is folded. */
const usual: readonly Ingredient[] = [
  "instant-coffee",
  "ascorbic-acid",
  "ascorbic-acid-tablet",
  "soda-anhydrous",
  "soda-decahydrate",
  "baking-soda",
  "borax",
  "table-salt",
];

/** What is proposed for: the film formats that the sheet names, where they can be read. */
const areaOf = (format: string): number | undefined => {
  try {
    return filmAreaCm2(format);
  } catch (error) {
    if (!isInputError(error)) throw error;
    return undefined;
  }
};

/** The shelf. */
export const shelfSection: MakeSection = (store) => {
  const { language } = store.sheet;
  const words = shelfWordsOf(language);
  const page = wordsOf(language);
  const set = (part: Partial<ShelfState>): void => {
    store.change({ shelf: { ...store.sheet.shelf, ...part } });
  };
  /** Another brew begins with its first step. */
  const choose = (part: Partial<ShelfState>): void => {
    set({ ...part, step: 0 });
  };

  // The cupboard.
  const jars = ingredients.map((name) =>
    button(
      ingredientName(name, language),
      () => {
        const { items } = store.sheet.shelf;
        choose({ items: items.includes(name) ? items.filter((one) => one !== name) : [...items, name] });
      },
      { class: "jar" },
    ),
  );
  const more = el(
    "details",
    { class: "more" },
    el("summary", {}, words.others),
    el("div", { class: "jars" }, ...jars.filter((_, i) => !usual.includes(ingredients[i] as Ingredient))),
  );
  const label = el("input", {
    "id": "label-mg",
    "class": "blank",
    "type": "text",
    "inputmode": "decimal",
    "size": 4,
    "autocomplete": "off",
    "aria-label": `${words.label} … ${words.labelUnit}`,
    "input": () => {
      choose({ labelMg: label.value });
    },
  });
  const labelLine = el("p", { class: "sentence" }, `${words.label} `, label, ` ${words.labelUnit}`);
  const cupboard = el(
    "div",
    { class: "card" },
    el("h3", {}, words.cupboard),
    el("div", { class: "jars" }, ...jars.filter((_, i) => usual.includes(ingredients[i] as Ingredient))),
    more,
    labelLine,
  );

  // How much, how warm, for what, and how it is measured.
  const shared = (name: "volume" | "temperature"): HTMLInputElement => {
    const input = el("input", {
      "id": `shelf-${name}`,
      "class": "blank",
      "type": "text",
      "size": 7,
      "autocomplete": "off",
      "aria-label": words[name],
      "aria-describedby": "shelf-message",
      "input": () => {
        store.write(name, input.value);
      },
    });
    return input;
  };
  const [volume, temperature] = [shared("volume"), shared("temperature")];
  const select = <Value extends string>(
    id: string,
    name: string,
    options: readonly (readonly [Value, string])[],
    chosen: string,
    change: (value: Value) => void,
  ): HTMLSelectElement => {
    const made: HTMLSelectElement = el(
      "select",
      {
        id,
        "class": "blank",
        "aria-label": name,
        "change": () => {
          change(made.value as Value);
        },
      },
      ...options.map(([value, text]) => el("option", { value, selected: value === chosen }, text)),
    );
    return made;
  };
  const material = select(
    "material",
    words.material,
    (["film", "plate", "paper"] as const).map((one) => [one, words.materials[one]] as const),
    store.sheet.shelf.material,
    (value) => {
      store.change({
        shelf: { ...store.sheet.shelf, material: value, step: 0 },
        invented: false,
        ticked: undefined,
      });
    },
  );
  const spoon = select(
    "spoon",
    words.spoon,
    [
      ...spoonVolumes.map((ml) => [String(ml), words.spoonOf(millilitres(ml, language))] as const),
      ["0", words.weighed] as const,
    ],
    String(store.sheet.shelf.spoonMl),
    (value) => {
      choose({ spoonMl: Number(value) });
    },
  );
  const parts: Readonly<Record<string, HTMLElement>> = { volume, temperature, material, spoon };
  const message = el("p", { id: "shelf-message", class: "message" });
  const amounts = el(
    "div",
    { class: "card" },
    el(
      "p",
      { class: "sentence" },
      ...words.sentence.split(/\{(\w+)\}/).map((part, i): Child => (i % 2 === 0 ? part : parts[part])),
    ),
    message,
  );

  // The brew.
  const spoons = el("ul", { class: "amounts" });
  const facts = el("p", { class: "said" });
  const cautions = el("ul", { class: "care" });
  const brew = el("div", { class: "card" }, el("h3", {}, words.brew), spoons, facts, cautions);

  // Its steps, one at a time.
  const counted = el("p", { class: "quiet" });
  const step = el("p", { class: "said", id: "mixing-step", tabindex: -1 });
  const turn = (by: number) => (): void => {
    set({ step: store.sheet.shelf.step + by });
    step.focus({ preventScroll: true });
  };
  const back = button(words.back, turn(-1), { class: "turn" });
  const next = button(words.next, turn(1), { class: "turn" });
  const steps = el(
    "div",
    { class: "card" },
    el("h3", {}, words.mixing),
    counted,
    step,
    el("div", { class: "answers" }, back, next),
  );

  const used = el("p", { class: "said", role: "status" });
  const use = button(
    words.use,
    () => {
      const proposal = now();
      if (proposal === undefined || !("start" in proposal)) return;
      take(proposal);
    },
    { id: "use-brew", class: "main" },
  );

  /** What the shelf gives; nothing while the temperature of the bath was never said. */
  const now = (): Proposal | undefined => {
    const { shelf, unit } = store.sheet;
    const { volume: ml, temperature: degrees } = store.answer.read;
    return degrees === ""
      ? undefined
      : proposalOf(shelf, parseVolume(ml), parseTemperature(degrees, { unit }));
  };

  /** The brew is what is known: its starting time, as wide as it is. */
  function take({ brew: mixed, start }: ProposedBrew): void {
    const { sheet, answer } = store;
    const { texts, read, developer, runs, began, shelf } = sheet;
    const made = fromRecipe(
      {
        schemaVersion: 2,
        material: { name: texts.name, kind: shelf.material, areaCm2: areaOf(answer.read.format) },
        developer: { kind: "brew", brew: mixed },
        baseline: {
          timeS: roundEstimate(start).timeS,
          temperatureC: answer.conditions.temperatureC,
          agitation: answer.conditions.agitation,
          logSd: start.logSd,
        },
      },
      sheet,
    );
    // Size and name stay as they were written.
    const { name: _, format: __, ...blanks } = made.written ?? {};
    store.replace({
      ...made,
      // Runs of another developer teach nothing of a brew.
      runs: developer === "brew" ? runs : [],
      began,
      developer: "brew",
      texts: { ...texts, ...blanks },
      read: { ...read, ...blanks },
      written: blanks,
    });
  }

  function amountText(amount: SpoonedAmount): string {
    const { ingredient, massG, spoons: count, spoonMl, tablets, solutionMl, solutionPercent } = amount;
    const name = ingredientName(ingredient, language);
    if (amount.volumeMl !== undefined) return words.weight(millilitres(amount.volumeMl, language), name);
    if (tablets !== undefined) return words.tablets(spoonCount(tablets), name);
    // What comes as a solution is measured in millilitres, with scales and without.
    if (solutionMl !== undefined && solutionPercent !== undefined)
      return words.solution(millilitres(solutionMl, language), solutionPercent, name);
    if (count === undefined || spoonMl === undefined || store.sheet.shelf.spoonMl === 0)
      return words.weight(grams(massG, language), name);
    return words.amount(
      spoonCount(roundSpoons(count)),
      millilitres(spoonMl, language),
      grams(massG, language),
      name,
    );
  }

  function carriesText(count: number, format: string): string {
    const [one, more] = words.pieces[store.sheet.shelf.material];
    return words.carries(count, count === 1 ? one : more, format);
  }

  function factsText({ lifeH, capacityCm2, start, strip }: ProposedBrew): string {
    const { format, temperature } = store.answer.read;
    const area = areaOf(format);
    const { timeS, lowS, highS, stepS } = roundEstimate(start);
    return [
      words.begin(lasting(timeS), formatTime(lowS), lasting(highS), temperature),
      words.strip(`${strip.map((s) => formatTime(s, { stepS })).join(", ")} min`),
      words.lives(hours(lifeH, language)),
      ...(area === undefined ? [] : [carriesText(Math.floor(capacityCm2 / area), format)]),
    ].join(" ");
  }

  const said = (list: readonly Caution[]): readonly Child[] =>
    list.map((caution) => el("li", {}, cautionText(caution, store.sheet)));

  function showBrew(proposal: Proposal | undefined): void {
    const works = proposal !== undefined && "start" in proposal;
    steps.hidden = !works;
    // A brew that is taken now would change the time of the negative that is in the bath.
    use.hidden = !works || store.sheet.bath?.run !== undefined;
    say(used, store.sheet.developer === "brew" ? words.used : "");
    if (proposal === undefined) {
      put(spoons, []);
      put(cautions, []);
      say(facts, page.fill(page.blanks.temperature));
    } else if ("error" in proposal) {
      put(spoons, []);
      put(cautions, []);
      say(facts, messageOf(proposal.error, String(proposal.error.actual), store.sheet));
    } else if (works) {
      put(
        spoons,
        proposal.spoons.map((amount) => el("li", {}, amountText(amount))),
      );
      say(facts, factsText(proposal));
      // What belongs to a step stands there; what is grave is seen before the first step, too.
      const shown = new Set(
        proposal.steps.flatMap(({ cautions: own = [] }) => own.map((one) => one.message)),
      );
      const listed = ({ severity, message }: Caution): boolean => severity !== "note" || !shown.has(message);
      put(cautions, said(proposal.cautions.filter(listed)));
      const count = proposal.steps.length;
      const at = Math.min(store.sheet.shelf.step, count - 1);
      const shownStep = proposal.steps[at];
      say(counted, words.step(at + 1, count));
      say(step, shownStep === undefined ? "" : stepText(shownStep, store.sheet));
      back.disabled = at === 0;
      next.disabled = at === count - 1;
    } else {
      const { add } = proposal;
      const help =
        add === "more-bath" || add === "warm-water" || add === "cool-water"
          ? words.more[add]
          : ingredientName(add, language);
      put(spoons, []);
      say(facts, `${reasonText(proposal, language)} ${words.add}: ${help}.`);
      put(cautions, said(proposal.cautions));
    }
  }

  const update = (): void => {
    const { shelf, texts } = store.sheet;
    jars.forEach((jar, i) => {
      attribute(jar, "aria-pressed", String(shelf.items.includes(ingredients[i] as Ingredient)));
    });
    labelLine.hidden = !shelf.items.includes("ascorbic-acid-tablet");
    if (label.value !== shelf.labelMg) label.value = shelf.labelMg;
    for (const [name, input] of [
      ["volume", volume],
      ["temperature", temperature],
    ] as const) {
      if (input.value !== texts[name]) input.value = texts[name];
      attribute(input, "aria-invalid", store.answer.problems[name] !== undefined && "true");
    }
    const problem = store.answer.problems.volume ?? store.answer.problems.temperature;
    say(message, problem === undefined ? "" : messageOf(problem, String(problem.actual), store.sheet));
    if (material.value !== shelf.material) material.value = shelf.material;
    if (spoon.value !== String(shelf.spoonMl)) spoon.value = String(shelf.spoonMl);
    showBrew(now());
  };

  const element = frame(
    "shelf",
    words.heading,
    el("div", { class: "cards" }, cupboard, amounts, brew, steps),
    use,
    used,
  );
  update();
  return { element, update };
};
