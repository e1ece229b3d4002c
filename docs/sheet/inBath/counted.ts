/* A bath that was used: one more went through it, and it is older by what the clock says. */
import { parseAge, parseCount } from "darkroom-kinetics";
import type { BathUse, Run } from "../bath.js";
import { button, el, say } from "../dom.js";
import { figure } from "../recipe.js";
import type { Sheet, Store, Texts } from "../sheet.js";
import type { Control } from "./control.js";
import type { Part } from "./place.js";

/** By so much it is older before that is offered, h. */
const OLDER_H = 0.05;

const useOf = ({ answer: { read } }: Store): BathUse => ({
  count: parseCount(read.count),
  ageH: parseAge(read.age),
});

/** What the blanks say of it. */
const textsOf = ({ count, ageH }: BathUse, sheet: Sheet): Pick<Texts, "count" | "age"> => ({
  count: figure(count, sheet),
  age: `${figure(ageH, sheet)} h`,
});

const older = (ageH: number, sinceMs: number): number => ageH + (Date.now() - sinceMs) / 3_600_000;

/** The last count, as long as the blanks still say it. */
function standing(store: Store): NonNullable<Sheet["bath"]>["counted"] {
  const { counted } = store.sheet.bath ?? {};
  const { count, ageH } = useOf(store);
  // The blanks hold two decimals.
  const same = (a: number, b = NaN): boolean => Math.abs(a - b) < 0.006;
  return same(count, counted?.now.count) && same(ageH, counted?.now.ageH) ? counted : undefined;
}

/** What changes with a run that is finished; nothing where another bath was written down meanwhile. */
export function countedAfter(store: Store, { followed, startedMs }: Run): Partial<Sheet> {
  const { sheet, answer } = store;
  const { bath, texts, runs } = sheet;
  const { usedCm2PerL, ageH } = answer.conditions;
  if (usedCm2PerL !== followed.conditions.usedCm2PerL || ageH !== followed.conditions.ageH) return {};
  const was = useOf(store);
  const now = {
    count: was.count + (followed.planned?.pieces ?? 1),
    ageH: older(was.ageH, standing(store)?.atMs ?? startedMs),
  };
  return {
    texts: { ...texts, ...textsOf(now, sheet) },
    // The strip was made in a younger bath: what it told stays as a run.
    ticked: undefined,
    invented: false,
    runs: answer.stripRun === undefined ? runs : [...runs, answer.stripRun],
    bath: bath && { ...bath, counted: { was, now, atMs: Date.now() } },
  };
}

/** Says what was counted, takes it back, and offers the age of now. */
export function countedPart({ store, words }: Control): Part {
  const said = el("p", { class: "said" });
  const write = (use: BathUse, counted: ReturnType<typeof standing>): void => {
    const { sheet } = store;
    const { bath, texts } = sheet;
    if (bath !== undefined)
      store.change({
        texts: { ...texts, ...textsOf(use, sheet) },
        ticked: undefined,
        bath: { ...bath, counted },
      });
  };
  const now = (): BathUse | undefined => {
    const counted = standing(store);
    return counted && { ...counted.now, ageH: older(counted.now.ageH, counted.atMs) };
  };
  const later = button("", () => {
    const [counted, use] = [standing(store), now()];
    if (counted !== undefined && use !== undefined) write(use, { ...counted, now: use, atMs: Date.now() });
  });
  const undo = button(
    words.uncount,
    () => {
      const counted = standing(store);
      if (counted !== undefined) write(counted.was, undefined);
    },
    { class: "plain" },
  );
  const element = el("div", { id: "counted" }, said, later, undo);
  return {
    element,
    update: () => {
      const [counted, use] = [standing(store), now()];
      element.hidden = counted === undefined;
      if (counted === undefined || use === undefined) return;
      const { count, age } = store.answer.read;
      say(said, words.counted(count, age));
      later.hidden = use.ageH < counted.now.ageH + OLDER_H;
      say(later, words.older(textsOf(use, store.sheet).age));
    },
  };
}
