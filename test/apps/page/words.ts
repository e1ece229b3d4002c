// What the page says itself, in its two languages, and the package's catalogues beside it: English needs none.
import type { AnswerTexts, PlanTexts, ProblemTexts } from "darkroom-kinetics";
import { german } from "./german.js";

export const languages = ["en", "de"] as const;
export type Language = (typeof languages)[number];

/** The catalogues of one language. */
interface Catalogue {
  readonly answer: AnswerTexts;
  readonly plan: PlanTexts;
  readonly problems: ProblemTexts;
}
export const catalogues: Readonly<Record<Language, Catalogue | undefined>> = { en: undefined, de: german };

interface Words {
  readonly title: string;
  readonly timeS: string;
  readonly temperatureC: string;
  readonly dilution: string;
  readonly todayC: string;
  readonly todayDilution: string;
  readonly reading: string;
  readonly why: string;
  readonly plan: string;
  readonly left: string;
  readonly pourOut: string;
  readonly doubt: string;
}

export const words: Readonly<Record<Language, Words>> = {
  en: {
    title: "How long today?",
    timeS: "It took",
    temperatureC: "at",
    dilution: "diluted",
    todayC: "The bath is at",
    todayDilution: "today diluted",
    reading: "The thermometer says",
    why: "Why",
    plan: "Plan",
    left: "left",
    pourOut: "Pour out",
    doubt: "This reading is in doubt.",
  },
  de: {
    title: "Wie lange heute?",
    timeS: "Es dauerte",
    temperatureC: "bei",
    dilution: "verdünnt",
    todayC: "Das Bad hat",
    todayDilution: "heute verdünnt",
    reading: "Das Thermometer zeigt",
    why: "Warum",
    plan: "Ablauf",
    left: "noch",
    pourOut: "Ausgießen",
    doubt: "Diese Ablesung ist zweifelhaft.",
  },
};
