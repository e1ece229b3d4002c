import { isPast, type Caution } from "../core/caution.js";
import { handbookIngredients, type HandbookRange, type Ingredient } from "../handbook/ingredients.js";
import { REST_S } from "../handbook/rest.js";
import { readBrew, type DeveloperBrew, type ReadBrew, type ReadPart, type SpoonHeap } from "./brew.js";
import { brewLife } from "./brewLife.js";
import { checkBrew } from "./checkBrew.js";
import { cupOf, cupsOf, dissolvesAs, MIXING_CUPS, WARM_C, type Cup } from "./cups.js";
import { mostGasL } from "./gas.js";
import { mixingText } from "./mixingText.js";
import { isAcid, isCoffee, isLiquid } from "./parts.js";
import { SOLUTION_PERCENT, solutionsOf, type MadeSolution } from "./solution.js";
import { solubility } from "./solubility.js";
import { hazardCaution, say } from "./text.js";

/** What a step tells to do. `"stop"` comes alone: such a brew is not to be mixed. */
export type MixingWord =
  | "stop"
  | "protect"
  | "dissolve"
  | "dissolve-caustic"
  | "make-solution"
  | "take"
  | "set-aside"
  | "join-caustic"
  | "add-solution"
  | "join"
  | "add-last"
  | "make-up"
  | "rest"
  | "label";

/** One step at the bench, as data and as a sentence. */
export interface MixingStep {
  /** 1, 2, 3 … */
  readonly step: number;
  /** what to do, by name */
  readonly do: MixingWord;
  /** what is dissolved or taken here */
  readonly ingredient?: Ingredient | undefined;
  /** how much of it, g: what is weighed here, or what the millilitres of a solution hold */
  readonly massG?: number | undefined;
  /** g in 100 ml of the solution that is made or poured here */
  readonly solutionPercent?: number | undefined;
  /** how much of the solution is poured into the bath, ml */
  readonly solutionMl?: number | undefined;
  /** the spoons that hold these grams, as they were given with the brew */
  readonly spoons?: number | undefined;
  /** the volume of such a spoon, ml */
  readonly spoonMl?: number | undefined;
  /** how full it is */
  readonly heap?: SpoonHeap | undefined;
  /** water of this cup, ml; 0 where it is dissolved in the coffee, left out in a cup that has its water */
  readonly waterMl?: number | undefined;
  /** how warm that water or coffee is, °C */
  readonly waterC?: number | undefined;
  /** brewed coffee that is taken or set aside here, or that it is dissolved in, ml */
  readonly coffeeMl?: number | undefined;
  /** what the coffee is set aside for */
  readonly forIngredients?: readonly Ingredient[] | undefined;
  /** the water is cold */
  readonly cold?: boolean | undefined;
  /** it goes into the cup of the step before */
  readonly sameCup?: boolean | undefined;
  /** it is dissolved in brewed coffee, which leaves too little water */
  readonly inCoffee?: boolean | undefined;
  /** most carbon dioxide that acid and carbonate can give off here, l */
  readonly gasL?: number | undefined;
  /** the same for a litre of bath: above 3 the acid goes in by portions */
  readonly gasLPerL?: number | undefined;
  /** finished volume of the step that makes up, ml */
  readonly volumeMl?: number | undefined;
  /** temperature it is brought to, °C */
  readonly temperatureC?: number | undefined;
  /** how long to wait before use, from and to, min */
  readonly minutes?: readonly [number, number] | undefined;
  /** life of the brew from mixing, h; see {@link brewLife} */
  readonly lifeH?: number | undefined;
  /** from when to when it may fail, h: the 90 % interval of that life */
  readonly failsH?: readonly [number, number] | undefined;
  /** what may hurt at this step, gravest first */
  readonly cautions?: readonly Caution[] | undefined;
  /** the step in English */
  readonly text: string;
}

type Draft = Omit<MixingStep, "step" | "text">;

/** Cautions of {@link checkBrew} that belong to the bench and to no single ingredient. */
const AT_THE_BENCH = [
  "too-concentrated",
  "caustic-in-coffee",
  "hydroxide-high",
  "caustic-bath",
  "sulphur-dioxide",
  "undissolved",
  "never-by-spoon",
];

/** What harms whoever mixes the brew, so no step says how: caustic soda that boils or meets coffee; fumes. */
const NOT_TO_BE_MIXED = ["too-concentrated", "caustic-in-coffee", "sulphur-dioxide"];

/** What is wrong with the alkali: where {@link checkBrew} stops for it, there is no recipe. */
const WRONG_ALKALI = ["hydroxide-high", "caustic-bath", "ph-high", "no-alkali", "alkali-too-weak"];

/**
 * How to mix a brew, step by step, as data and as sentences: caustic soda first, as a solution in its own
 * cold cup, each thing dissolved apart, soda and coffee joined, vitamin C last, made up to volume.
 *
 * @param brew - the brew, as for {@link brewPh}
 * @returns numbered steps in the spoons the brew was given in, each with what may hurt there, in its data
 * and in words; one single step `"stop"` where the bath has less than 10 ml of cold water for each gram of
 * caustic soda, brewed coffee leaves too little water to join it with the other alkali, or the bath gives off
 * sulphur dioxide, or where {@link checkBrew} stops the brew for its alkali
 * @throws TypeError when something is of the wrong kind
 * @throws RangeError for a brew that {@link brewPh} refuses
 *
 * @remarks The cups together take at most 95 % of the volume. Each has what its powder dissolves in at 40 °C,
 * by {@link solubility}; where the water does not suffice, the step has the caution `undissolved`.
 * Caustic soda and potassium bromide are weighed once into a solution of 10 %, at least 5 g
 * of them (assumed), and measured in millilitres; so much bromide that its solution would take more than 15 %
 * of the water is dissolved as it is. Caustic soda has at least
 * 10 ml of cold water for each gram: its heat of solution, 44.5 kJ/mol (from memory), then warms it by 27 K.
 * Brewed coffee is taken first. Where it leaves too little water, so many millilitres of it are set aside to
 * dissolve the rest in: caustic soda never, nor any alkali beside it.
 * Order, 5 to 10 min of rest and use within the hour: common practice with coffee, soda and vitamin C. Local
 * codes and safety data sheets go first.
 *
 * @example
 * ```ts
 * const soda: BrewPart = { ingredient: "soda-anhydrous", massG: 21.6 };
 * const brew = { volumeMl: 400, ingredients: [soda] };
 * mixingSteps(brew)[1].waterMl // => 140
 * mixingSteps(brew)[1].do // => "dissolve"
 * ```
 */
export function mixingSteps(brew: DeveloperBrew): readonly MixingStep[] {
  const read = readBrew("mixingSteps/brew", brew);
  const all = checkBrew(brew);
  const bench = all.filter(({ code }) => AT_THE_BENCH.includes(code));
  // The gravest first: what harms before what does not work.
  const stops = [...NOT_TO_BE_MIXED, ...WRONG_ALKALI].flatMap((code) =>
    all.filter((one) => one.code === code && one.severity === "stop"),
  );
  if (stops.length > 0) return numbered([{ do: "stop", cautions: stops }]);
  const { volumeMl, temperatureC, parts } = read;
  const { lifeH, lowH, highH } = brewLife(brew);
  const life = lifeH > 0 ? { lifeH, failsH: [lowH, highH] as const } : {};
  const drafts: Draft[] = [{ do: "protect", ...(bench.length > 0 ? { cautions: bench } : {}) }];
  const { solutions } = solutionsOf(read);
  const cups = cupsOf(read);
  drafts.push(...solutions.map(makingStep), ...coffeeSteps(parts, cups));
  for (const name of MIXING_CUPS) {
    const inCup = ({ ingredient }: MadeSolution): boolean =>
      cupOf({ data: handbookIngredients[ingredient] }) === name;
    drafts.push(...cups.filter(({ cup }) => cup === name).flatMap((cup) => cupSteps(cup, read, all)));
    drafts.push(...solutions.filter(inCup).map(pouringStep));
    if (name === "instant-coffee" && parts.some(isCoffee)) drafts.push({ do: "join" });
  }
  drafts.push(
    { do: "make-up", volumeMl, temperatureC },
    { do: "rest", minutes: [REST_S.least / 60, REST_S.most / 60], ...life },
    { do: "label" },
  );
  return numbered(drafts);
}

function numbered(drafts: readonly Draft[]): readonly MixingStep[] {
  return drafts.map((draft, i) => ({ step: i + 1, ...draft, text: mixingText(draft) }));
}

/** A solution is made before all else, so that it is cold when it is needed. */
function makingStep({ ingredient, weighedG, waterMl }: MadeSolution): Draft {
  const cautions = hazardCaution(ingredient);
  return {
    do: ingredient === "sodium-hydroxide" ? "dissolve-caustic" : "make-solution",
    ingredient,
    massG: weighedG,
    waterMl,
    cold: true,
    solutionPercent: SOLUTION_PERCENT,
    ...(cautions.length > 0 ? { cautions } : {}),
  };
}

/** What of a solution goes into the bath. */
function pouringStep({ ingredient, massG, solutionMl }: MadeSolution): Draft {
  return {
    do: ingredient === "sodium-hydroxide" ? "join-caustic" : "add-solution",
    ingredient,
    massG,
    solutionMl,
    solutionPercent: SOLUTION_PERCENT,
  };
}

/** Brewed coffee is taken first, and so many millilitres of it are set aside for what has no water. */
function coffeeSteps(parts: readonly ReadPart[], cups: readonly Cup[]): readonly Draft[] {
  const taken = parts.filter(isLiquid).map(({ ingredient, data, massG }): Draft => ({
    do: "take",
    ingredient,
    massG,
    coffeeMl: massG / (data.bulkGPerMl as HandbookRange).value,
  }));
  const aside = cups.flatMap(({ solids, coffeeMl }): Draft[] => {
    if (coffeeMl === undefined) return [];
    return [{ do: "set-aside", coffeeMl, forIngredients: solids.map(({ ingredient }) => ingredient) }];
  });
  return [...taken, ...aside];
}

/** The steps of one cup: the first has the water, the others go into it. */
function cupSteps(cup: Cup, { parts, volumeMl }: ReadBrew, told: readonly Caution[]): readonly Draft[] {
  const { solids, waterMl, coffeeMl, inCoffee } = cup;
  const foam = told.filter(({ code }) => code === "acid-foams");
  const gasL = mostGasL(parts);
  const gasLPerL = (1000 * gasL) / volumeMl;
  return solids.map((part, i): Draft => {
    const { ingredient, massG, spoons } = part;
    const cautions = [
      ...(isAcid(part) ? foam : []),
      ...hazardCaution(ingredient),
      ...notInTheCup(part, cup, told),
    ];
    const draft = { ingredient, massG, ...spoons, ...(cautions.length > 0 ? { cautions } : {}) };
    const coffee = inCoffee ? { inCoffee, ...(coffeeMl === undefined ? {} : { coffeeMl }) } : {};
    const own = i === 0 ? { waterMl, waterC: WARM_C, ...coffee } : { sameCup: true };
    if (!isAcid(part)) return { do: "dissolve", ...draft, ...own };
    return { do: "add-last", ...draft, ...own, ...(gasL > 0 ? { gasL, gasLPerL } : {}) };
  });
}

/** That a part has too little water in its cup, where nothing else says so already. */
function notInTheCup(part: ReadPart, { short }: Cup, told: readonly Caution[]): readonly Caution[] {
  const { ingredient } = dissolvesAs(part);
  const gPer100 = solubility(ingredient, WARM_C);
  if (gPer100 === undefined || !isPast(short, 1)) return [];
  const isSaid = ({ code, data }: Caution): boolean =>
    code === "undissolved" && data.ingredient === ingredient;
  if (told.some(isSaid)) return [];
  const limit = 10 * gPer100;
  const figures = { path: part.path, quantity: "gPerL", limit, actual: limit * short } as const;
  return [say("undissolved", "warn", { ...figures, data: { ingredient } })];
}
