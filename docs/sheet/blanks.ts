/* A sentence with blanks that take what people write. */
import type { CheckProblem } from "darkroom-kinetics";
import { problemOf } from "./answer.js";
import { exampleText, problemText } from "./catalogue.js";
import { attribute, button, el, put, type Child } from "./dom.js";
import { emptyAs, type BlankName, type Sheet, type Store } from "./sheet.js";
import { wordsOf } from "./words.js";

/** A sentence, the messages below it, and how they follow a change. */
export interface Sentence {
  readonly elements: readonly HTMLElement[];
  readonly update: () => void;
}

/**
 * Makes a sentence of a template such as "It took {time} at {temperature}."; `others` are elements for names
 * that are no blanks.
 */
export function sentenceOf(
  store: Store,
  template: string,
  others: Readonly<Record<string, HTMLElement>> = {},
): Sentence {
  const words = wordsOf(store.sheet.language);
  const blanks: { readonly name: BlankName; readonly input: HTMLInputElement }[] = [];
  // Nothing has to stand for the name: what belongs there is told. Other blanks tell what they are taken as.
  const hintOf = (name: BlankName): string =>
    name === "name" ? words.blanks.name : emptyAs(name, store.answer.read, store.sheet.language);
  const blankOf = (part: string): Child => {
    if (Object.hasOwn(others, part)) return others[part];
    const name = part as BlankName;
    const text = store.sheet.texts[name];
    const input = el("input", {
      "id": name,
      "class": "blank",
      "type": "text",
      "value": text,
      "size": sizeOf(text || hintOf(name)),
      "placeholder": hintOf(name),
      "maxlength": 80,
      "aria-label": words.blanks[name],
      "autocomplete": "off",
      "autocapitalize": "off",
      "spellcheck": "false",
      "enterkeyhint": "done",
      "input": () => {
        store.write(name, input.value);
      },
    });
    blanks.push({ name, input });
    return input;
  };
  // A stop or a bracket never begins a line: it stays with the blank before it.
  const [first = "", ...rest] = template.split(/\{(\w+)\}/);
  const parts: Child[] = [first];
  for (let i = 0; i < rest.length; i += 2) {
    const [, stop = "", text = ""] = /^([.,:)]*)(.*)$/s.exec(rest[i + 1] ?? "") ?? [];
    parts.push(el("span", { class: "glue" }, blankOf(rest[i] ?? ""), stop), text);
  }
  const messages = el("div", { class: "messages" });
  const update = (): void => {
    const { sheet, answer } = store;
    const wrong = blanks.filter(({ name }) => answer.problems[name] !== undefined);
    for (const { name, input } of blanks) {
      const bad = answer.problems[name] !== undefined;
      if (input.value !== sheet.texts[name]) input.value = sheet.texts[name];
      attribute(input, "size", sizeOf(sheet.texts[name] || hintOf(name)));
      attribute(input, "placeholder", hintOf(name));
      attribute(input, "aria-invalid", bad && "true");
      attribute(input, "aria-describedby", bad && `${name}-message`);
    }
    const { formatTaken } = answer;
    const taken =
      formatTaken !== undefined && blanks.some(({ name }) => name === "format")
        ? [el("p", { class: "said" }, words.formatTaken(answer.read.format, formatTaken))]
        : [];
    put(messages, [
      ...taken,
      ...wrong.map(({ name }) => {
        const asked = answer.problems[name] as CheckProblem;
        const { readings = [], format } = asked.expected;
        const texts = readings.map((reading) => exampleText(reading, format, sheet));
        // A question is asked where an answer can be used.
        const useless = texts.map((reading) => problemOf(sheet, name, reading));
        const problem = useless.includes(undefined) ? asked : (useless[0] ?? asked);
        const message = el("p", { id: `${name}-message`, class: "message" });
        put(message, [
          messageOf(problem, sheet.texts[name], sheet),
          ...(problem === asked ? texts : []).map((reading) =>
            button(reading, () => {
              store.write(name, reading);
              blanks.find((blank) => blank.name === name)?.input.focus();
            }),
          ),
        ]);
        return message;
      }),
    ]);
  };
  update();
  return { elements: [el("p", { class: "sentence" }, ...parts), messages], update };
}

/** Why a blank cannot be used, and what could be. */
export function messageOf(problem: CheckProblem, text: string, sheet: Sheet): string {
  const { code, expected } = problem;
  const { examples, readings, format } = expected;
  const words = wordsOf(sheet.language);
  const written = (one: string): string => exampleText(one, format, sheet);
  if (readings !== undefined) return words.ambiguous(text, readings.map(written).join(words.or));
  if (examples === undefined || code === "out-of-range")
    return words.outOfRange(text, problemText(problem, sheet));
  const wanted = examples.map((example) => words.quoted(written(example))).join(words.or);
  return text.trim() === "" ? words.empty(wanted) : words.unreadable(text, wanted);
}

const sizeOf = (text: string): number => Math.max(2, text.length);
