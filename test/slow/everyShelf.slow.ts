/*
 * Every shelf that can be made of the handbook's ingredients, all subsets: each gets a sound brew or a reason.
 * SHELF_STEP=7 takes every seventh subset. An ordinary machine walks them all in about half an hour.
 */
import { expect, it } from "vitest";
import { handbookIngredients, proposeBrew, type Ingredient, type ShelfItem } from "../../src/index.js";
import { badProposal } from "../brew/proposals.js";

it("every shelf gets a brew or a reason", () => {
  const items = (Object.keys(handbookIngredients) as Ingredient[]).map((ingredient): ShelfItem =>
    ingredient === "ascorbic-acid-tablet" ? { ingredient, labelMg: 500 } : ingredient,
  );
  const step = Number(process.env["SHELF_STEP"] ?? 1);
  const all = 2 ** items.length;
  const reasons = new Map<string, number>();
  const bad: string[] = [];
  let brews = 0;
  let shelves = 0;
  for (let mask = 0; mask < all; mask += step) {
    const shelf = items.filter((_, i) => Math.floor(mask / 2 ** i) % 2 === 1);
    const proposed = proposeBrew({ shelf, volumeMl: 500 });
    const wrong = badProposal(proposed);
    shelves += 1;
    if (wrong !== undefined) bad.push(`${wrong}: ${JSON.stringify(shelf)}`);
    if (proposed.brew === undefined) reasons.set(proposed.reason, (reasons.get(proposed.reason) ?? 0) + 1);
    else brews += 1;
  }
  console.log(
    `${shelves} shelves: ${brews} brews; ${JSON.stringify(Object.fromEntries(reasons))}; bad: ${bad.length}`,
  );
  expect(bad.slice(0, 5)).toEqual([]);
  expect(brews).toBeGreaterThan(0.9 * shelves);
});
