/*
 * Screenshots of the page at each width and state, to be looked at: node test/page/shots.mjs FOLDER [STATE …].
 */
import { mkdirSync } from "node:fs";
import { openPage, states, widths } from "./browser.mjs";

const [folder = "reports/page", ...only] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
const { browser, open } = await openPage();
for (const [name, state] of Object.entries(states)) {
  if (only.length > 0 && !only.includes(name)) continue;
  for (const [width, height] of widths) {
    const page = await open({ width, height, ...state.options });
    await state.reach?.(page);
    await page.screenshot({ path: `${folder}/${name}-${width}.png`, fullPage: true });
    await page.close();
  }
}
const sheet = await open();
await sheet.pdf({ path: `${folder}/print.pdf`, preferCSSPageSize: true });
await browser.close();
