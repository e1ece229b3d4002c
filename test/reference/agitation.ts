/*
 * Published figures on agitation: ratios of time under two agitations, and the settings that
 * state none.
 */
import type { Agitation } from "../../src/index.js";
import type { NotUsed, Published } from "./published.js";
import { F32 } from "./temperature.js";

/** Time under `to` over time under `from`; a range where a range is printed. */
export interface AgitationRatio {
  readonly from: Agitation;
  readonly to: Agitation;
  readonly low: number;
  readonly high: number;
}

const every = (everyS: number): Agitation => ({ everyS });

export const agitationRatios: readonly Published<AgitationRatio>[] = [
  {
    id: "AGI-007",
    source: "Eastman Kodak, publication F-4017, TRI-X 320 and 400 films, 2007, development tables, 20 °C",
    provenance: "from memory",
    about: "D-76 6.75 and 8 min, HC-110 B 3.75 and 4.75 min; small tank every 30 s, large tank every 60 s",
    rows: [
      { from: every(30), to: every(60), low: 1.185, high: 1.185 },
      { from: every(30), to: every(60), low: 1.267, high: 1.267 },
    ],
  },
  {
    id: "AGI-009",
    source: "Ilford/Harman, film technical sheets, n.d., note on rotary processors",
    provenance: "from memory",
    about: "rotary, against inversions every 60 s: less by up to 15 %",
    rows: [{ from: every(60), to: "continuous", low: 0.85, high: 1 }],
  },
  {
    id: "AGI-012",
    source: "Eastman Kodak, publication F-5 and Darkroom Dataguide, n.d.",
    provenance: "from memory",
    about: "tray, continuous, against tank once a minute",
    rows: [{ from: every(60), to: "continuous", low: 0.8, high: 0.8 }],
  },
  {
    id: "AGI-013",
    source: "practitioners' rule: continuous against intermittent",
    provenance: "common practice",
    about: "any",
    rows: [
      { from: every(30), to: "continuous", low: 0.8, high: 0.9 },
      { from: every(30), to: every(60), low: 1.1, high: 1.2 },
    ],
  },
];

/** An hour of stand at 1+100 replaces 10 to 15 minutes, intermittent, at 1+50; semi-stand 45 to 60. */
export const standPractice: Published<{
  readonly minutes: readonly [number, number];
  readonly intermittentMin: readonly [number, number];
}> = {
  id: "AGI-014",
  source: "practitioners' rule: stand development",
  provenance: "common practice",
  about: "Rodinal; films of ISO 100 to 400; 20 °C",
  rows: [{ minutes: [60, 60], intermittentMin: [10, 15] }],
};

/** Under this a tank develops unevenly. */
export const shortestTime: Published<{ readonly minutes: number }> = {
  id: "AGI-011",
  source: "Eastman Kodak, film data sheets, n.d., note on short times",
  provenance: "from memory",
  about: "tank",
  rows: [{ minutes: 5 }],
};

/** D-76 in a rotary tube, °C as printed; the same times stand in the °F column of the temperature tables. */
export const rotaryStock: Published<{
  readonly temperatureC: number;
  readonly film100: number;
  readonly film400: number;
}> = {
  id: "AGI-005",
  source: F32,
  provenance: "read",
  about: "D-76 stock; T-MAX 100 and 400; rotary tube, continuous",
  rows: [
    { temperatureC: 20, film100: 6.5, film400: 7 },
    { temperatureC: 21, film100: 6, film400: 6.5 },
    { temperatureC: 22, film100: 5.5, film400: 6 },
    { temperatureC: 24, film100: 5, film400: 5.5 },
  ],
};

export const agitationNotUsed: readonly NotUsed[] = [
  {
    ids: ["AGI-001", "AGI-002", "AGI-003", "AGI-004", "AGI-008", "AGI-010", "AGI-015", "AGI-016"],
    reason:
      "a setting (so many seconds in every so many) or a time under one agitation: no ratio to check a law with",
  },
  {
    ids: ["AGI-006"],
    reason: "0.72 for rotary against 30 s, from memory and uncertain: no test may rest on it",
  },
];
