import { fahrenheitToCelsius, formatTime } from "darkroom-kinetics";
import { cautionText, staleText, temperatureText } from "../catalogue.js";
import { attribute, button, el, say } from "../dom.js";
import { clockUnit } from "../figures.js";
import { frame, type MakeSection } from "../section.js";
import { unusable } from "../answer.js";
import { namesOf, wordsOf } from "../words.js";

/** The one time to develop, or the reason why it is refused. */
export const developSection: MakeSection = (store) => {
  const words = wordsOf(store.sheet.language);
  const time = el("span", { id: "answer-time", class: "time" });
  const unit = el("span", { class: "unit" });
  const interval = el("span", { id: "answer-interval" });
  const gravest = el("p", { class: "gravest" });
  const answered = el(
    "p",
    { class: "answer" },
    time,
    " ",
    unit,
    el("span", { class: "range" }, words.nineInTen, el("br"), interval),
  );
  const reason = el("p", { id: "reason" });
  /** A number that was meant in °F. */
  const meant = (fahrenheit: number): string => temperatureText(fahrenheitToCelsius(fahrenheit), store.sheet);
  const mend = button("", () => {
    const { gravest: caution } = store.answer;
    if (caution?.actual === undefined) return;
    const known = caution.path?.startsWith("/baseline") === true;
    store.write(known ? "knownTemperature" : "temperature", meant(caution.actual));
  });
  const refused = el("div", { class: "refused" }, el("div", { class: "hatched" }), reason, mend);
  const fill = el("p", { class: "said" });
  const old = el("p", { class: "said" });
  const update = (): void => {
    const { rounded, gravest: caution, stale, missing, problems } = store.answer;
    answered.hidden = gravest.hidden = rounded === undefined;
    refused.hidden = rounded !== undefined || missing.length > 0;
    fill.hidden = missing.length === 0;
    old.hidden = !stale || rounded === undefined;
    say(fill, words.fill(namesOf(missing, words)));
    say(old, staleText(store));
    attribute(answered, "class", stale ? "answer stale" : "answer");
    const sentence = caution === undefined ? "" : cautionText(caution, store.sheet);
    if (rounded === undefined) {
      // While a blank cannot be read, the answer before says nothing of it.
      const open = words.fill(namesOf(unusable(problems), words));
      say(reason, `${words.noAnswer} ${stale ? open : sentence}`);
      mend.hidden = stale || caution?.code !== "maybe-fahrenheit";
      if (caution?.actual !== undefined && !mend.hidden)
        say(mend, words.wasFahrenheit(meant(caution.actual)));
    } else {
      const shown = formatTime(rounded.timeS);
      say(time, shown);
      say(unit, clockUnit(shown));
      say(interval, words.between(formatTime(rounded.lowS), formatTime(rounded.highS)));
      say(gravest, sentence);
    }
  };
  return { element: frame("develop", words.develop, answered, old, refused, fill, gravest), update };
};
