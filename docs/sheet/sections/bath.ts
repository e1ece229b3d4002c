/* In the bath: before it is poured in, while it develops, and the baths after it. */
import type { BathState } from "../bath.js";
import { attribute, el } from "../dom.js";
import { afterPart } from "../inBath/after.js";
import { beforePart, followedBy } from "../inBath/before.js";
import { blacken } from "../inBath/black.js";
import { controlOf } from "../inBath/control.js";
import { cuePart } from "../inBath/cue.js";
import { developingPart } from "../inBath/developing.js";
import { dishPart } from "../inBath/place.js";
import { stayAwake } from "../inBath/awake.js";
import { shownAt } from "../run.js";
import { frame, type MakeSection } from "../section.js";

/** Between two looks at the clock, ms. */
const TICK_MS = 250;

const MINUTE_MS = 60_000;

/** The bars of a phone's browser follow the colour of the page: in a dish they are black too. */
function darkenBars(dark: boolean): void {
  const bars = document.querySelector("meta[name=theme-color]");
  if (!dark) bars?.remove();
  else if (bars === null) document.head.append(el("meta", { name: "theme-color", content: "#000" }));
}

/** In the bath. */
export const bathSection: MakeSection = (store) => {
  const control = controlOf(store);
  const { words, bath, set } = control;
  const cue = cuePart(control);
  const look = (): void => {
    cue.focus();
  };
  const before = beforePart(control, look);
  const developing = developingPart(control, look);
  const after = afterPart(control, look);
  // The same advice again: while it runs, what there is to do comes first.
  const dish = dishPart(control);
  const running = el(
    "div",
    { class: "running" },
    cue.element,
    developing.element,
    after.element,
    dish.element,
  );
  const element = frame("bath", words.heading, before.element, running);

  let timer: ReturnType<typeof setInterval> | undefined;
  let drawn: { readonly state: BathState; readonly second: number } | undefined;
  /** What changes from second to second: the clock is the time of day, however long nothing ran. */
  const tick = (): void => {
    const state = bath();
    const { run } = state;
    if (run === undefined || !element.isConnected) {
      clearInterval(timer);
      timer = undefined;
      return;
    }
    const nowMs = Date.now();
    // Seconds are shown: in between nothing changes, and a phone lives longer.
    const second = Math.floor((nowMs - run.startedMs) / 1000);
    if (drawn?.state === state && drawn.second === second) return;
    drawn = { state, second };
    const shown = shownAt(run, state.place, nowMs);
    cue.update(shown);
    developing.element.hidden = shown.phase !== "develop";
    after.element.hidden = shown.phase === "develop";
    if (shown.phase === "develop") developing.update(run, state, shown);
    else after.update(run, state, shown);
  };

  /** As long as it develops it follows the sheet, but only where the sheet has a time. */
  const followSheet = (): boolean => {
    const { run } = bath();
    const { rounded, stale } = store.answer;
    if (run === undefined || run.outS !== undefined || rounded === undefined || stale) return false;
    const followed = followedBy(store);
    if (JSON.stringify(followed) === JSON.stringify(run.followed)) return false;
    set({ run: { ...run, followed } });
    return true;
  };

  const update = (): void => {
    if (followSheet()) return;
    const { place, run, black } = bath();
    before.element.hidden = run !== undefined;
    running.hidden = run === undefined;
    if (run === undefined) before.update();
    dish.update();
    attribute(document.documentElement, "data-lamp", place === "tank" ? undefined : place);
    if (typeof window === "undefined") return;
    darkenBars(place !== "tank");
    blacken(black && run !== undefined, words.hold, () => {
      set({ black: false });
    });
    stayAwake(run !== undefined);
    if (run === undefined) return;
    timer ??= setInterval(tick, TICK_MS);
    queueMicrotask(tick);
  };

  update();
  if (typeof window !== "undefined") {
    document.addEventListener("visibilitychange", tick);
    // A bath grows older without a change.
    const minutes = setInterval(() => {
      if (!element.isConnected) clearInterval(minutes);
      else if (bath().run === undefined) before.update();
    }, MINUTE_MS);
    // A page that is opened again in the middle of a bath opens there.
    if (bath().run !== undefined)
      requestAnimationFrame(() => {
        element.scrollIntoView();
      });
  }
  return { element, update };
};
