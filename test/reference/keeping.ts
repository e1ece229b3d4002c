/*
 * Published figures on keeping: limits per storage, and the one test that shows how a bath
 * dies.
 */
import type { KeepingStorage } from "../../src/index.js";
import { IVES, J78, type NotUsed, type Published } from "./published.js";

/** A limit that the handbook module carries; `low` and `high` differ where a range is printed. */
export const keepingLimits: readonly Published<{
  readonly developer: string;
  readonly storage: KeepingStorage;
  readonly low: number;
  readonly high: number;
  readonly unit: "minute" | "hour" | "day" | "month";
}>[] = [
  {
    id: "KEP-001",
    source: IVES,
    provenance: "read",
    about: "pyro-metol, mixed",
    rows: [{ developer: "pyro-metol", storage: "open", low: 45, high: 45, unit: "minute" }],
  },
  {
    id: "KEP-002",
    source: IVES,
    provenance: "read",
    about: "chlorhydroquinone-metol, mixed; 256 times the other",
    rows: [{ developer: "chlorhydroquinone-metol", storage: "open", low: 8, high: 8, unit: "day" }],
  },
  {
    id: "KEP-013",
    source:
      "J. B. Schriever (ed.), Self-Instructing Library of Practical Photography, Scranton, 1909, sec. 527",
    provenance: "read",
    about: "pyro-soda tank bath",
    rows: [{ developer: "pyro", storage: "covered-tank", low: 1, high: 1, unit: "day" }],
  },
  {
    id: "KEP-017",
    source: J78,
    provenance: "from memory",
    about: "D-76 stock",
    rows: [
      { developer: "metol-hydroquinone-borax", storage: "full-bottle", low: 6, high: 6, unit: "month" },
      { developer: "metol-hydroquinone-borax", storage: "half-full-bottle", low: 2, high: 2, unit: "month" },
    ],
  },
  {
    id: "KEP-018",
    source: J78,
    provenance: "from memory",
    about: "D-76 1+1, tray or tank",
    rows: [{ developer: "metol-hydroquinone-borax", storage: "open", low: 24, high: 24, unit: "hour" }],
  },
  {
    id: "KEP-019",
    source: "Eastman Kodak, publication J-109, XTOL, n.d.",
    provenance: "from memory",
    about: "XTOL stock; early sheets say 6 months full",
    rows: [
      { developer: "phenidone-ascorbate", storage: "full-bottle", low: 6, high: 12, unit: "month" },
      { developer: "phenidone-ascorbate", storage: "half-full-bottle", low: 2, high: 2, unit: "month" },
    ],
  },
  {
    id: "KEP-023",
    source: "Ilford/Harman, ID-11 technical sheet, n.d.",
    provenance: "from memory",
    about: "ID-11 stock: the full bottle agrees, the half-full one is half of what the other maker says",
    rows: [
      { developer: "metol-hydroquinone-borax", storage: "full-bottle", low: 6, high: 6, unit: "month" },
      { developer: "metol-hydroquinone-borax", storage: "half-full-bottle", low: 1, high: 2, unit: "month" },
    ],
  },
  {
    id: "KEP-025",
    source: "practitioners' rule: coffee, soda and vitamin C",
    provenance: "common practice",
    about: "open beaker, use within",
    rows: [{ developer: "coffee-carbonate-ascorbate", storage: "open", low: 30, high: 60, unit: "minute" }],
  },
  {
    id: "KEP-026",
    source: "practitioners' rule: p-aminophenol",
    provenance: "common practice",
    about: "1+50 working bath",
    rows: [{ developer: "p-aminophenol", storage: "open", low: 1, high: 8, unit: "hour" }],
  },
];

/** Bromide paper, 120 s, a strip every half hour: `black` is "full" up to 1.5 h by implication. */
export const cliff: Published<{
  readonly ageH: number;
  readonly black: "full" | "slightly weak" | "not reached";
}> = {
  id: "KEP-003",
  source:
    "Shinkawa Photographic Laboratory, L-ascorbic acid oxidation in alkaline solution (in Japanese), 2015",
  provenance: "read",
  about: "1 g ascorbic acid in 100 ml of saturated sodium carbonate; open, 20 °C",
  rows: [
    { ageH: 0, black: "full" },
    { ageH: 0.5, black: "full" },
    { ageH: 1, black: "full" },
    { ageH: 1.5, black: "full" },
    { ageH: 2, black: "slightly weak" },
    { ageH: 2.5, black: "not reached" },
  ],
};

export const keepingNotUsed: readonly NotUsed[] = [
  {
    ids: ["KEP-004", "KEP-005", "KEP-006", "KEP-007", "KEP-008", "KEP-009", "KEP-010"],
    reason: "rate constants and chemistry of ascorbate: the brew module, where at all",
  },
  {
    ids: ["KEP-011", "KEP-014", "KEP-024"],
    reason:
      'a concentrate in the freezer, "almost indefinite", a tank with a floating lid: no storage of the handbook module',
  },
  { ids: ["KEP-012"], reason: "a colour tank over a weekend" },
  { ids: ["KEP-015"], reason: "fixer: the process module" },
  { ids: ["KEP-016"], reason: "the points of the curve are not on the page" },
  {
    ids: ["KEP-020", "KEP-021", "KEP-022"],
    reason: "three brand packings, not in the handbook module; two of them uncertain",
  },
  { ids: ["KEP-027"], reason: "reports of sudden failure without a number" },
];

/** Records of the file on dilution, agitation and exhaustion that belong to other modules. */
export const otherModules: readonly NotUsed[] = [
  {
    ids: run("PSH", [
      [1, 9],
      [13, 21],
    ]),
    reason: "push and pull: the contrast module",
  },
  { ids: run("FIX", [[1, 30]]), reason: "fixing and washing: the process module" },
  { ids: run("REC", [[1, 19]]), reason: "recipes: the recipe module" },
];

function run(prefix: string, spans: readonly (readonly [number, number])[]): readonly string[] {
  return spans.flatMap(([from, to]) =>
    Array.from({ length: to - from + 1 }, (_, i) => `${prefix}-${String(from + i).padStart(3, "0")}`),
  );
}
