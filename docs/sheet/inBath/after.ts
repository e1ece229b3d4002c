/* The baths after the developer, up to the wash. */
import { withPouringUndone, type BathState, type Run } from "../bath.js";
import { cautionText } from "../catalogue.js";
import { button, el, say } from "../dom.js";
import { asRun } from "../recipe.js";
import { learnedFrom, withLateBath, type Shown } from "../run.js";
import { lines, reached, type Control } from "./control.js";
import { countedAfter } from "./counted.js";

/** So soon after its start a bath cannot be late, s. */
const SOON_S = 3;

/** The part after the developer. */
export interface AfterPart {
  readonly element: HTMLElement;
  update(run: Run, bath: BathState, shown: Shown): void;
}

/** Makes the part; `pressed` is called when a button was pressed that then goes away. */
export function afterPart({ store, words, bath, set, act }: Control, pressed: () => void): AfterPart {
  const cautions = el("ul", { class: "care" });
  const press = (work: () => void) => (): void => {
    work();
    pressed();
  };
  const late = button(
    words.late,
    press(() => {
      act((run, _, place) => withLateBath(run, place, Date.now()));
    }),
    { class: "wide" },
  );
  const outAt = el("p", { class: "quiet" });
  const back = button(
    words.back,
    press(() => {
      act(withPouringUndone);
    }),
    { id: "back", class: "wide" },
  );
  const keeps = el("p", { class: "quiet" }, words.keep);
  const finish = button(
    words.finish,
    () => {
      const { run, place, done = [] } = bath();
      const known = run?.followed.known;
      if (run === undefined || known === undefined) return;
      const learned = learnedFrom(run, place);
      // It is light again: the whole sheet comes back.
      store.change(countedAfter(store, run));
      set({
        run: undefined,
        black: false,
        place: "tank",
        done: [...done, ...(learned === undefined ? [] : [{ run: learned, known }])],
      });
    },
    { id: "finish", class: "wide" },
  );
  return {
    element: el("div", { class: "after" }, late, cautions, outAt, back, finish, keeps),
    update: (run, _, { phase, step, clockS, cautions: unwise, notes }) => {
      lines(
        cautions,
        [...unwise, ...notes].map((caution) => cautionText(caution, store.sheet)),
      );
      say(outAt, words.outAt(reached(run.outS ?? 0)));
      late.hidden = phase === "over" || clockS - run.lateS - step.startS < SOON_S;
      back.hidden = phase === "over";
      keeps.hidden = asRun(run.followed.baseline, run.followed.conditions) === undefined;
    },
  };
}
