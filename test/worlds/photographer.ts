/* A simulated photographer: makes runs, notes them, and has questions whose right answers are known. */
import type { Eye } from "./eyes.js";
import type { Random } from "./random.js";
import type { Start, Where, WorldRun } from "./subject.js";

/** How the base time moves with each dated run. */
export interface Drift {
  /** ln(time) a run, its sign drawn; of a random walk the standard deviation of a step */
  readonly step: number;
  readonly kind: "random" | "steady";
}

/** Marks of a run, and what they add to ln of the right time as it is seen. */
export interface Marked {
  readonly marks: Partial<WorldRun>;
  readonly off: number;
}

/** From the least to the greatest. */
type Range = readonly [low: number, high: number];

/** A photographer's ways. */
export interface Ways {
  readonly start: Start;
  /** ln of the right time under any conditions */
  readonly nature: (where: Where) => number;
  readonly eye: Eye;
  /** the runs are dated, one a day, and the base time may drift */
  readonly drift?: Drift | undefined;
  /** dates are noted */
  readonly dated: boolean;
  /** the share of dated runs whose date is not noted */
  readonly undatedShare?: number;
  /** develops for the predicted time, rather than for one that is 15 % off at random */
  readonly confirms?: boolean;
  /** keeps to the starting conditions, and to one time, which is 15 % off at random */
  readonly keeps?: boolean;
  /** asks about any dilution, not only about those of the runs */
  readonly asksNew?: boolean;
  /** so many runs are made in one session, which is off by its own, standard deviation in ln(time) */
  readonly session?: { readonly runs: number; readonly sd: number };
  /** the temperatures of the runs and of the questions, °C; 12 to 26 when left out */
  readonly temperatures?: { readonly runs: Range; readonly questions: Range };
  /** marks of the i-th run */
  readonly marked?: (i: number) => Marked;
  /** with which thermometer, or for which brew, the questions are asked, and what that adds */
  readonly asked?: { readonly marks: Pick<WorldRun, "thermometer" | "strength">; readonly off: number };
  /** a run is botched: added to ln of the right time as it is seen */
  readonly slip?: () => number;
  /** the thermometer is misread, or the temperature misnoted, by so much, °C */
  readonly misnotesC?: () => number;
}

export interface Photographer {
  /** the next run; `predictS` gives the time that is known so far */
  run(predictS: (where: Where) => number): WorldRun;
  /** a question now, and its right answer in s */
  question(): { readonly where: Where & Pick<WorldRun, "thermometer" | "strength">; readonly rightS: number };
}

const DILUTIONS = ["1+4", "1+9", "1+14", "1+19", "1+29"];
/** Printed times are rounded, and lie about a smooth law. */
const PRINTED_LOG_SD = 0.04;
const USUAL_C: Range = [12, 26];
const INTERVALS_S = [10, 30, 60, 120];

export function photographer(random: Random, ways: Ways): Photographer {
  const { nature, eye, drift } = ways;
  const sign = random.uniform() < 0.5 ? 1 : -1;
  // Each has a few dilutions and intervals of their own.
  const dilutions = [random.pick(DILUTIONS), random.pick(DILUTIONS), ways.start.dilution];
  const intervals = [random.pick(INTERVALS_S), ways.start.agitation.everyS];
  let moved = 0;
  let made = 0;
  let sessionOff = 0;
  const { session = { runs: 1, sd: 0 } } = ways;
  const { runs = USUAL_C, questions = USUAL_C } = ways.temperatures ?? {};
  const habit = 0.15 * (ways.keeps ? random.normal() : 0);
  const { temperatureC, dilution, agitation } = ways.start;
  const drawAny = ([low, high]: Range): Where => ({
    temperatureC: low + (high - low) * random.uniform(),
    dilution: random.pick(dilutions),
    agitation: { everyS: random.pick(intervals) },
    usedCm2PerL: random.uniform() < 0.5 ? 0 : 3000 * random.uniform(),
    ageH: random.uniform() < 0.5 ? 0 : 6 * random.uniform(),
  });
  const draw = ways.keeps ? () => ({ temperatureC, dilution, agitation, usedCm2PerL: 0, ageH: 0 }) : drawAny;
  return {
    run(predictS) {
      if (drift && made > 0) moved += drift.step * (drift.kind === "steady" ? sign : random.normal());
      const where = draw(runs);
      const { marks, off } = ways.marked?.(made) ?? { marks: {}, off: 0 };
      if (session.sd > 0 && made % session.runs === 0) sessionOff = session.sd * random.normal();
      const right = nature(where) + moved + off + sessionOff + (ways.slip?.() ?? 0);
      const { printed = false } = marks;
      const given = printed
        ? right + PRINTED_LOG_SD * random.normal()
        : ways.confirms
          ? Math.log(predictS(where))
          : ways.keeps
            ? nature(where) + habit
            : right + 0.15 * random.normal();
      const noted = ways.dated && random.uniform() >= (ways.undatedShare ?? 0);
      const date = new Date(Date.UTC(2020, 0, 1 + Math.floor(made / session.runs)))
        .toISOString()
        .slice(0, 10);
      made += 1;
      return {
        id: `run ${made}`,
        ...where,
        temperatureC: where.temperatureC + (ways.misnotesC?.() ?? 0),
        ...(noted ? { date } : {}),
        ...marks,
        timeS: Math.exp(given),
        outcome: printed ? { kind: "good", logSd: PRINTED_LOG_SD } : eye(right - given, Math.exp(given)),
      };
    },
    question() {
      const where = ways.asksNew ? { ...draw(questions), dilution: random.pick(DILUTIONS) } : draw(questions);
      const { marks, off } = ways.asked ?? { marks: {}, off: 0 };
      return { where: { ...where, ...marks }, rightS: Math.exp(nature(where) + moved + off) };
    },
  };
}
