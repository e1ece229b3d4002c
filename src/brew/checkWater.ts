/*
 * Module: brew. Whether the water holds what is to dissolve in it, and whether caustic soda gets its own cup.
 */
import { isPast, type Caution } from "../core/caution.js";
import { SODA_G_PER_MOL, type Ingredient } from "../handbook/ingredients.js";
import type { ReadBrew } from "./brew.js";
import { isCaustic, isLiquid } from "./parts.js";
import { solubility } from "./solubility.js";
import { alkaliPowders, waterForAll } from "./cups.js";
import { causticWater } from "./solution.js";
import { say } from "./text.js";

/** Cautions about caustic soda that gets too little water, or leaves too little for the rest. */
function causticCautions(read: ReadBrew): Caution[] {
  const { needMl, haveMl } = causticWater(read);
  if (needMl === 0) return [];
  const rest = read.parts.filter((part) => !isCaustic(part) && !isLiquid(part));
  const restMl = waterForAll(rest, read.temperatureC);
  const stop = isPast(needMl, haveMl);
  if (!stop && !isPast(needMl + restMl, haveMl)) return [];
  return [
    say("too-concentrated", stop ? "stop" : "warn", {
      quantity: "volumeMl",
      limit: needMl,
      actual: haveMl,
      data: { ingredient: "sodium-hydroxide" },
    }),
  ];
}

/**
 * That brewed coffee leaves too little water to pour caustic soda into the other alkali: the two would meet
 * in coffee. The solution is cold, so the alkali has what it needs at the temperature of the bath.
 */
function coffeeCautions(read: ReadBrew): Caution[] {
  const { needMl, haveMl } = causticWater(read);
  if (needMl === 0 || !read.parts.some(isLiquid)) return [];
  const limit = needMl + waterForAll(alkaliPowders(read), read.temperatureC);
  if (!isPast(limit, haveMl)) return [];
  return [say("caustic-in-coffee", "stop", { quantity: "volumeMl", limit, actual: haveMl })];
}

/**
 * What is more than the water can hold, in g per litre; the hydrates of soda are added up as dry soda, salt
 * of both kinds together.
 */
function undissolved({ parts, volumeMl, temperatureC }: ReadBrew): Caution[] {
  const amounts = new Map<Ingredient, { gPerL: number; path: string }>();
  for (const { ingredient, data, massG, path } of parts) {
    const isSoda = ingredient.startsWith("soda-");
    const key = isSoda ? "soda-anhydrous" : ingredient === "iodised-salt" ? "table-salt" : ingredient;
    const dryG = isSoda ? (massG * SODA_G_PER_MOL) / (data.molarMassGPerMol as number) : massG;
    const before = amounts.get(key);
    amounts.set(key, { gPerL: (before?.gPerL ?? 0) + (dryG * 1000) / volumeMl, path: before?.path ?? path });
  }
  return [...amounts].flatMap(([ingredient, { gPerL, path }]) => {
    const limit = 10 * (solubility(ingredient, temperatureC) ?? Infinity);
    if (!isPast(gPerL, limit)) return [];
    return [
      say("undissolved", "warn", { path, quantity: "gPerL", limit, actual: gPerL, data: { ingredient } }),
    ];
  });
}

/** All cautions about water. */
export function waterCautions(read: ReadBrew): Caution[] {
  return [...causticCautions(read), ...coffeeCautions(read), ...undissolved(read)];
}
