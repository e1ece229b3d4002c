/*
 * Every state of the page at every width: nothing sticks out, axe finds nothing, all targets are large, and nothing is
 * asked of a network.
 */
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { after, before, describe, it } from "node:test";
import { openPage, states, widths } from "./browser.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
let chromium;
before(async () => {
  chromium = await openPage();
});
after(() => chromium.browser.close());

/** What axe finds, in lines. */
async function violations(page) {
  // In the page's own context: its policy forbids scripts from elsewhere, and evaluate is none.
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => axe.run(document, { resultTypes: ["violations"] }));
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 120)}`));
}

/** What is wider than the page, by its text. */
const stickingOut = (page) =>
  page.evaluate(() => {
    const { clientWidth, scrollWidth } = document.documentElement;
    const wide = [...document.querySelectorAll("main *")].filter((element) => {
      const { right, left, width } = element.getBoundingClientRect();
      return width > 1 && (right > clientWidth + 1 || left < -1) && element.closest("svg") === null;
    });
    return [
      ...(scrollWidth > clientWidth ? [`the page is ${scrollWidth} px wide`] : []),
      ...wide.map((element) => element.outerHTML.slice(0, 100)),
    ];
  });

/** Targets that are too small: blanks of less than 44 px, others of less than 48. */
const small = (page) =>
  page.evaluate(() =>
    [...document.querySelectorAll("button, input, select, summary, label.button, label.box, a[href]")]
      .filter((element) => {
        if (element.closest("[hidden], .unseen, .box") !== null && !element.matches(".box")) return false;
        const { width, height } = element.getBoundingClientRect();
        if (width === 0) return false;
        if (element.matches(".blank")) return height < 44;
        return height < 48 || (width < 48 && !element.matches(".box"));
      })
      .map((element) => element.outerHTML.slice(0, 120)),
  );

/** Boxes and menus whose words are wider than they are; a menu cuts them off without a sign. */
function tooNarrow() {
  const words = document.createElement("span");
  words.style.position = "absolute";
  words.style.whiteSpace = "nowrap";
  document.body.append(words);
  const found = [...document.querySelectorAll("select, input.blank, .box span")].filter((element) => {
    if (element.clientWidth === 0 && element.offsetWidth === 0) return false;
    words.style.font = getComputedStyle(element).font;
    words.textContent = element.selectedOptions?.[0]?.textContent ?? element.value ?? element.textContent;
    const room = element.matches(".box span") ? element.parentElement.clientWidth : element.clientWidth;
    return words.getBoundingClientRect().width > room + 1;
  });
  words.remove();
  return found.map((element) => element.outerHTML.slice(0, 120));
}

for (const [name, state] of Object.entries(states))
  describe(`the page, ${name}`, () => {
    const requests = [];
    let page;
    // One page is turned to each width, as a phone is.
    before(async () => {
      page = await chromium.open({ requests, ...state.options });
      await state.reach?.(page);
    });
    after(() => page.context().close());
    for (const [width, height] of widths)
      it(`fits ${width} px, and axe finds nothing`, async () => {
        await page.setViewportSize({ width, height });
        assert.deepEqual(await stickingOut(page), []);
        assert.deepEqual(await violations(page), []);
        assert.deepEqual(await small(page), []);
      });
    it("loses nothing with text at 200 %", async () => {
      await page.setViewportSize({ width: 390, height: 844 });
      await page.evaluate(() => {
        document.documentElement.style.fontSize = "200%";
      });
      assert.deepEqual(await stickingOut(page), []);
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll("main *")]
          .filter(
            (element) =>
              element.closest("svg, .unseen, [hidden], [data-lamp] h1") === null &&
              element.scrollWidth > element.clientWidth + 1 &&
              element.clientWidth > 0 &&
              getComputedStyle(element).overflow !== "visible",
          )
          .map((element) => element.outerHTML.slice(0, 120)),
      );
      assert.deepEqual(cut, []);
      assert.deepEqual(await page.evaluate(tooNarrow), []);
    });
    it("asks nothing of a network", () => {
      assert.deepEqual(
        requests.filter((url) => url !== chromium.address && !url.startsWith("data:")),
        [],
      );
    });
  });
