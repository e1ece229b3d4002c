/*
 * Dates as people write them, as ISO dates.
 */
import { ambiguous, type TextForm, unreadable } from "../core/guards.js";
import { LONGEST_TEXT } from "../quantities/numberText.js";
import { isDay, isoDate } from "../quantities/isoDate.js";

/** What a date without its year, or with its day and month in an order that is not plain, has to be told. */
export interface DateOptions {
  /** the year of a date without one */
  readonly year?: number | undefined;
  /** which comes first in "3/4/2024", where no figure above 12 decides */
  readonly dates?: "day-first" | "month-first" | undefined;
}

const EXAMPLES = ["2024-03-05", "5 March 2024", "5.3.2024"];
/** How a date is written. */
export const DATES: TextForm = { format: "date", examples: EXAMPLES };
const FULL_DATES: TextForm = { format: "date with its year", examples: EXAMPLES };

/** The months in English and German, cut short or not, without marks on their letters. */
const MONTHS = [
  "jan(?:uary?|ner)?",
  "feb(?:ruary?|er)?",
  "mar(?:ch|z)?|mrz|maerz",
  "apr(?:il)?",
  "ma[yi]",
  "jun[ei]?",
  "jul[yi]?",
  "aug(?:ust)?",
  "sept?(?:ember)?",
  "o[ck]t(?:ober)?",
  "nov(?:ember)?",
  "de[cz](?:ember)?",
].map((month) => `(?:${month})`);
const MONTH = `(${MONTHS.join("|")})`;
const YEAR = String.raw`(?:(\d{4})|'?(\d{2}))`;

const CLOCK = /[,\s]+([01]?\d|2[0-3]):([0-5]\d)(?::[0-5]\d)?$/;
const YEAR_FIRST = /^(\d{4})([-/. ])(\d{1,2})\2(\d{1,2})$/;
const POINTS = new RegExp(String.raw`^(\d{1,2})\. ?(\d{1,2})(?:\.?|\. ?${YEAR})$`);
const FIGURES = new RegExp(String.raw`^(\d{1,2})([-/])(\d{1,2})(?:\2${YEAR})?$`);
/** No month begins like a day of the week. */
const DAY_NAME = /^(?:mo|tu|we|th|fr|sa|su|di|mi|do|so)[a-z]*[.,]* /;
const DAY_FIRST = new RegExp(
  String.raw`^(\d{1,2})(?:\.|st|nd|rd|th)?[- ]?(?:of )?${MONTH}\.?,?(?:[- ]?${YEAR})?$`,
);
const MONTH_FIRST = new RegExp(String.raw`^${MONTH}\.? ?(\d{1,2})(?:st|nd|rd|th)?(?:,? ${YEAR})?$`);

type Day = readonly [year: number | undefined, month: number, day: number];

/**
 * The ISO date of a text: an ISO date, figures, or words in English or German. Figures between points have
 * the day first. Between slashes or hyphens a figure above 12 decides, else the option; else the date may be
 * two, and is refused with both.
 *
 * Years of two figures are 1969 to 2068: IEEE Std 1003.1-2017 (POSIX), strptime.
 */
export function dateCell(at: string, text: string, { year, dates }: DateOptions): string {
  if (text.length > LONGEST_TEXT) unreadable(at, DATES, text);
  // One form for all: a T stands before the time of day.
  if (/^\d{4}-\d{2}-\d{2}/.test(text)) return isoDate(at, text.replace(/^(.{10})[,\s]+(?=\d)/, "$1T"));
  // The letters without their marks: März, mars and MÄRZ alike.
  const bare = text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/\s+/g, " ");
  const [clock = "", hours = "", minutes = ""] = CLOCK.exec(bare) ?? [];
  const found = daysOf(bare.slice(0, bare.length - clock.length).replace(DAY_NAME, ""), dates);
  if (found.some(([own]) => own === undefined) && year === undefined) unreadable(at, FULL_DATES, text);
  const readings = found
    .map(([own = year as number, month, day]) => [own, month, day] as const)
    .filter((each) => isDay(...each))
    .map((each) => each.map((figure) => String(figure).padStart(2, "0")).join("-"));
  const [first, second] = [...new Set(readings)];
  if (first === undefined) unreadable(at, DATES, text);
  if (second !== undefined) ambiguous(at, DATES, [first, second], text);
  return isoDate(at, clock === "" ? first : `${first}T${hours.padStart(2, "0")}:${minutes}`);
}

/** The days that a text may mean; none where it is no such text. */
function daysOf(text: string, dates: DateOptions["dates"]): readonly Day[] {
  const of = (month: string | undefined, day: string | undefined, year?: string, short?: string): Day => {
    const two = Number(short);
    const full = year ?? (short === undefined ? undefined : two + (two < 69 ? 2000 : 1900));
    return [full === undefined ? undefined : Number(full), Number(month), Number(day)];
  };
  const [, y, , m, d] = YEAR_FIRST.exec(text) ?? [];
  if (y !== undefined) return [of(m, d, y)];
  const points = POINTS.exec(text);
  if (points) return [of(points[2], points[1], points[3], points[4])];
  const figures = FIGURES.exec(text);
  if (figures) {
    const [, one, mark, two, long, short] = figures;
    const dayFirst = of(two, one, long, short);
    const monthFirst = of(one, two, long, short);
    if (dates !== undefined) return [dates === "day-first" ? dayFirst : monthFirst];
    // "24-03-05" may also have its year first.
    return mark === "-" && short !== undefined
      ? [of(two, short, undefined, one), dayFirst, monthFirst]
      : [dayFirst, monthFirst];
  }
  const [, day, before, long, short] = DAY_FIRST.exec(text) ?? [];
  if (before !== undefined) return [of(monthOf(before), day, long, short)];
  const [, name, after, year, cut] = MONTH_FIRST.exec(text) ?? [];
  return name === undefined ? [] : [of(monthOf(name), after, year, cut)];
}

const monthOf = (name: string): string =>
  String(1 + MONTHS.findIndex((month) => new RegExp(`^${month}$`).test(name)));

/**
 * A date of a spreadsheet as text: the day that it has in UTC where it lies on midnight there, else the day
 * of the calendar here.
 */
export function dayText(date: Date): string {
  if (Number.isNaN(date.getTime())) return "no date";
  if (date.getTime() % 86_400_000 === 0) return date.toISOString().slice(0, 10);
  const figures = [date.getFullYear(), date.getMonth() + 1, date.getDate()];
  return figures.map((figure) => String(figure).padStart(2, "0")).join("-");
}
