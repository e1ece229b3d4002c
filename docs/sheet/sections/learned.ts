/* Learned: the runs, the band as it narrowed with each, the test that would help most, and pasted notes. */
import {
  formatSpread,
  formatTime,
  isInputError,
  parseDilution,
  parseTemperature,
  parseTime,
  problemOf,
  readRunNotes,
  roundTime,
  tableRecords,
  type DevelopmentRun,
  type RoundedEstimate,
} from "darkroom-kinetics";
import { newBath, type BathState, type Waiting } from "../bath.js";
import { messageOf } from "../blanks.js";
import { cautionText, problemsText, temperatureText } from "../catalogue.js";
import { attribute, button, el, put, say, type Child } from "../dom.js";
import { bandsOf, bestTest, type Ground } from "../learned.js";
import { learnedWordsOf, type Judged } from "../learnedWords.js";
import { lasting } from "../figures.js";
import { frame, type MakeSection } from "../section.js";
import { isLearned, learnedOf } from "../recipe.js";
import { dilutionText, inFigures, inTongue, knownKey, storedSheet, type Sheet } from "../sheet.js";

const judgements: readonly Judged[] = ["good", "thin", "dense", "failed"];

/** The columns that can be written over. */
type Field = "time" | "temperature" | "dilution";

/** Learned. */
export const learnedSection: MakeSection = (store) => {
  const words = learnedWordsOf(store.sheet.language);
  const problem = el("p", { class: "message", role: "alert" });
  const degrees = (celsius: number): string => temperatureText(celsius, store.sheet);
  const dilutionOf = (dilution: DevelopmentRun["dilution"]): string =>
    dilution === undefined ? "" : dilutionText(dilution, store.sheet.language);
  /** Keeps these runs, where something can be learned from them; else the sheet says why not. */
  const setRuns = (runs: readonly DevelopmentRun[], more: Partial<Sheet> = {}): boolean => {
    say(problem, "");
    return store.change({ runs, invented: false, ...more });
  };

  // The runs that wait for their outcome.
  const waiting = el("div", { class: "waiting" });

  /** One of them: judged against what was known when it was developed. */
  function cardOf({ run, known }: Waiting, i: number): HTMLElement {
    const others = (): BathState => {
      const { bath = newBath } = store.sheet;
      return { ...bath, done: bath.done?.filter((_, k) => k !== i) };
    };
    const { name, time, knownTemperature } = known.sheet.read;
    const here = known.key === knownKey(store.answer);
    const ask = el("p", { class: "ask", id: `came-out-${i}` }, here ? words.ask : words.elsewhere);
    const answers = here
      ? judgements.map((kind) =>
          button(
            words.outcomes[kind],
            () => {
              setRuns([...store.sheet.runs, { ...run, outcome: { kind } }], { bath: others() });
            },
            { class: `outcome-${kind}` },
          ),
        )
      : [
          // It would take the negative out of the bath that is in it now.
          store.sheet.bath?.run === undefined &&
            button(words.knownThen([name, time, knownTemperature].filter(Boolean).join(", ")), () => {
              store.replace(inTongue(storedSheet(known.sheet), store.sheet));
            }),
        ];
    return el(
      "div",
      { class: "card" },
      el(
        "p",
        { class: "said" },
        words.waiting(name, lasting(roundTime(run.timeS, 5)), degrees(run.temperatureC)),
      ),
      ask,
      el("div", { "class": "answers", "role": "group", "aria-labelledby": ask.id }, ...answers),
      button(
        words.away,
        () => {
          if (confirm(words.awayAsked)) store.change({ bath: others() });
        },
        { class: "plain" },
      ),
    );
  }

  const none = el("p", { class: "said" }, words.none);
  const made = el("p", { class: "said" });
  // Runs of a file that are not of its known time.
  const foreignSays = el("p", { class: "said" });
  const foreign = el(
    "div",
    {},
    foreignSays,
    button(words.takeForeign, () => {
      const { recipe, runs } = store.sheet;
      const { knowledge = {} } = recipe ?? {};
      if (recipe !== undefined && isLearned(knowledge))
        store.replace({
          recipe: { ...recipe, knowledge: knowledge.prior.laws },
          runs: [...knowledge.runs, ...runs],
        });
    }),
  );
  const body = el("tbody");
  const table = el(
    "table",
    { class: "runs" },
    el(
      "thead",
      {},
      el("tr", {}, ...Object.values(words.columns).map((column) => el("th", { scope: "col" }, column))),
    ),
    body,
  );

  /** How a field is written and read. */
  const fields: Readonly<
    Record<Field, { show: (run: DevelopmentRun) => string; read: (text: string) => Partial<DevelopmentRun> }>
  > = {
    time: {
      show: ({ timeS }) => formatTime(roundTime(timeS, 5)),
      read: (text) => ({ timeS: parseTime(text) }),
    },
    temperature: {
      show: ({ temperatureC }) => degrees(temperatureC),
      read: (text) => ({ temperatureC: parseTemperature(text, { unit: store.sheet.unit }) }),
    },
    dilution: {
      show: ({ dilution }) => dilutionOf(dilution),
      read: (text) => ({ dilution: text.trim() === "" ? undefined : parseDilution(text) }),
    },
  };

  /** A day as the language writes it. */
  const dateText = (date = "–"): string =>
    store.sheet.language === "de" ? date.split("-").reverse().join(".") : date;

  function rowOf(run: DevelopmentRun, i: number): HTMLTableRowElement {
    const cell = (column: keyof typeof words.columns, ...children: readonly Child[]): HTMLElement =>
      el("td", { "data-column": words.columns[column] }, ...children);
    const blank = (name: Field): HTMLElement => {
      const input = el("input", {
        "id": `run-${i}-${name}`,
        "class": "blank",
        "data-own": true,
        "type": "text",
        "value": fields[name].show(run),
        "size": 7,
        "autocomplete": "off",
        "aria-label": words.field(words.columns[name], i + 1),
        "change": () => {
          try {
            const read = fields[name].read(input.value);
            const kept = setRuns(store.sheet.runs.map((one, k) => (k === i ? { ...one, ...read } : one)));
            attribute(input, "aria-invalid", !kept && "true");
          } catch (error) {
            if (!isInputError(error)) throw error;
            say(problem, messageOf(error, input.value, store.sheet));
            attribute(input, "aria-invalid", "true");
          }
        },
      });
      return cell(name, input);
    };
    const { kind } = run.outcome;
    const outcome: HTMLSelectElement = el(
      "select",
      {
        "class": "blank",
        "aria-label": words.field(words.columns.outcome, i + 1),
        "change": () => {
          const chosen = judgements.find((one) => one === outcome.value);
          if (chosen === undefined) return;
          setRuns(store.sheet.runs.map((one, k) => (k === i ? { ...one, outcome: { kind: chosen } } : one)));
        },
      },
      ...(isJudged(kind) ? [] : [el("option", { value: kind, selected: true }, words.other[kind])]),
      ...judgements.map((one) => el("option", { value: one, selected: one === kind }, words.outcomes[one])),
    );
    const remove = button(
      words.columns.remove,
      () => {
        say(problem, "");
        store.replace({ runs: store.sheet.runs.filter((_, k) => k !== i) });
      },
      { "class": "plain", "aria-label": words.removeRun(i + 1) },
    );
    return el(
      "tr",
      {},
      cell("date", dateText(run.date)),
      blank("time"),
      blank("temperature"),
      blank("dilution"),
      cell("outcome", outcome),
      cell("remove", remove),
    );
  }

  // The band as it narrowed.
  const bands = el("ul", { class: "bands" });
  const bandPart = el("div", {}, el("h3", {}, words.band), bands);

  function bandOf(band: RoundedEstimate | undefined, i: number, low: number, high: number): HTMLElement {
    const at = (timeS: number): number => (100 * Math.log(timeS / low)) / Math.log(high / low);
    const label = i === 0 ? words.before : words.after(i);
    if (band === undefined) return el("li", {}, label);
    const { lowS, timeS, highS } = band;
    return el(
      "li",
      {},
      el(
        "span",
        { class: "band-label" },
        `${label}: ${formatTime(timeS)}, `,
        el("span", {}, words.between(formatTime(lowS), formatTime(highS))),
      ),
      el(
        "span",
        { "class": "band-bar", "aria-hidden": "true" },
        el("span", { style: `left:${at(lowS).toFixed(1)}%;width:${(at(highS) - at(lowS)).toFixed(1)}%` }),
        el("i", { style: `left:${at(timeS).toFixed(1)}%` }),
      ),
    );
  }

  // The test that would help most.
  const worth = el("p", { class: "said" });
  const testPart = el("div", {}, el("h3", {}, words.test), worth);

  // Pasted notes.
  const notes = el("textarea", {
    "id": "notes",
    "data-own": true,
    "rows": 4,
    "spellcheck": "false",
    "autocomplete": "off",
  });
  const outcome = el("ul", { class: "care" });
  const readNotes = (): void => {
    const records = tableRecords(notes.value);
    const { runs: all, rows, rejected, unread, cautions } = readRunNotes(records);
    const left = new Map(rejected.map(({ row, problems }) => [row, problems]));
    const fit = all.filter((run, i) => {
      try {
        return learnedOf(store.answer.given, [run]);
      } catch (error) {
        if (!isInputError(error)) throw error;
        // Its path begins with the place among the runs.
        left.set(rows[i] ?? 0, [{ ...problemOf(error), path: error.path.replace("/runs/0", "") }]);
        return false;
      }
    });
    const known = new Set(store.sheet.runs.map((run) => JSON.stringify(run)));
    const runs = fit.filter((run) => !known.has(JSON.stringify(run)));
    const again = fit.length - runs.length;
    put(outcome, []);
    if (runs.length > 0 && !setRuns([...store.sheet.runs, ...runs])) return;
    put(outcome, [
      el("li", {}, words.readRuns(runs.length)),
      again > 0 && el("li", {}, words.knownRuns(again)),
      // Rows are counted without the headings.
      ...[...left].map(([row, problems]) =>
        el("li", {}, words.rejected(row, problemsText(problems, store.sheet))),
      ),
      ...cautions.map((one) => el("li", {}, cautionText(one, store.sheet))),
      ...unread.map(({ row, heading, text, whole }) =>
        el("li", {}, whole ? words.unreadColumn(heading) : words.unreadCell(row, heading, text)),
      ),
    ]);
    // The rows that were not read stay, below their headings; all of them where a cell runs over several lines.
    const lines = notes.value.split(/\r?\n/).filter((line) => /[^\s;,]/.test(line));
    if (left.size === 0) notes.value = "";
    else if (lines.length === records.length + 1)
      notes.value = lines.filter((_, row) => row === 0 || left.has(row)).join("\n");
  };
  const read = button(words.read, readNotes, { id: "read-notes" });
  const paste = el(
    "div",
    {},
    el("h3", {}, el("label", { for: "notes" }, words.paste)),
    el("p", { class: "quiet" }, words.pasteHint),
    notes,
    read,
    el("div", { role: "status" }, outcome),
  );

  let drawn = "";
  let listed = "";
  const update = (): void => {
    const { sheet, answer } = store;
    const { runs, bath } = sheet;
    const done = bath?.done ?? [];
    const list = JSON.stringify([done, knownKey(answer), bath?.run === undefined, sheet.unit]);
    if (list !== listed) put(waiting, done.map(cardOf));
    listed = list;
    none.hidden = runs.length > 0 || done.length > 0;
    table.hidden = runs.length === 0;
    const { name = "", time = "" } = sheet.made ?? {};
    made.hidden = name === "" || name === answer.read.name;
    say(made, words.made(`${name}, ${time}`));
    const { knowledge = {} } = answer.untaught;
    foreign.hidden = !isLearned(knowledge);
    if (isLearned(knowledge))
      say(foreignSays, words.foreign(knowledge.runs.length, formatTime(knowledge.prior.baseline.timeS)));
    const ground: Ground = {
      ...answer.given,
      recipe: answer.untaught,
      conditions: answer.conditions,
    };
    const key = JSON.stringify([runs, ground, sheet.unit]);
    if (key === drawn) return;
    drawn = key;
    put(body, runs.map(rowOf));
    bandPart.hidden = runs.length === 0;
    if (runs.length > 0) {
      const all = bandsOf(ground, runs);
      const known = all.filter((band) => band !== undefined);
      const low = Math.min(...known.map(({ lowS }) => lowS));
      const high = Math.max(...known.map(({ highS }) => highS));
      put(
        bands,
        all.map((band, i) => bandOf(band, i, low, high)),
      );
    }
    const best = answer.rounded === undefined ? undefined : bestTest(ground, runs);
    testPart.hidden = best === undefined;
    if (best !== undefined && answer.rounded !== undefined) say(worth, worthOf(best, ground, answer.rounded));
  };

  function worthOf(
    { name, timeS, logSd }: NonNullable<ReturnType<typeof bestTest>>,
    ground: Ground,
    shown: RoundedEstimate,
  ): string {
    const { candidates } = words;
    const { temperatureC, dilution } = ground.baseline;
    const what = {
      today: candidates.today,
      fresh: candidates.fresh,
      temperature: candidates.temperature(degrees(temperatureC)),
      dilution: candidates.dilution(dilutionOf(dilution)),
    }[name];
    // Today's bath has the time of the sheet, and others are rounded as that one is.
    const testS = name === "today" ? shown.timeS : roundTime(timeS, shown.stepS);
    return words.worth(what, lasting(testS), inFigures(formatSpread(logSd), store.sheet.language));
  }

  update();
  return {
    element: frame(
      "learned",
      words.heading,
      waiting,
      none,
      made,
      foreign,
      table,
      problem,
      bandPart,
      testPart,
      paste,
    ),
    update,
  };
};

const isJudged = (kind: DevelopmentRun["outcome"]["kind"]): kind is Judged =>
  (judgements as readonly string[]).includes(kind);
