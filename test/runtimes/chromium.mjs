/* Shows a built page in headless Chromium and reads what a person would see. */
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";

const TYPES = { html: "text/html", js: "text/javascript" };
const PROGRAMS = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
const FLAGS =
  "--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync".split(
    " ",
  );

/** Serves the files of one folder on loopback. */
function serve(folder) {
  const server = createServer((request, response) => {
    const name = basename(request.url === "/" ? "index.html" : request.url);
    const file = join(folder, name);
    response.writeHead(existsSync(file) ? 200 : 404, {
      "content-type": TYPES[name.split(".").pop()] ?? "text/plain",
    });
    response.end(existsSync(file) ? readFileSync(file) : "");
  });
  return new Promise((done) => server.listen(0, "127.0.0.1", () => done(server)));
}

/** Opens the page in `folder` and hands it to `use`, with the errors that the page throws and the browser's version. */
export async function openInChromium(playwright, folder, use, missing = Error) {
  const executablePath = [process.env.CHROMIUM ?? "", ...PROGRAMS].find((path) => existsSync(path));
  if (executablePath === undefined)
    throw new missing(
      "no Chromium on this machine: bash test/runtimes/install.sh installs it, as root on Debian",
    );
  const { chromium } = createRequire(import.meta.url)(playwright);
  const profile = mkdtempSync(join(tmpdir(), "chromium-"));
  const server = await serve(folder);
  let browser;
  try {
    browser = await chromium.launchPersistentContext(profile, {
      executablePath,
      args: FLAGS,
      headless: true,
      viewport: { width: 800, height: 500 },
    });
    const page = await browser.newPage();
    const errors = [];
    page.on("pageerror", (error) => errors.push(error.message));
    await page.goto(`http://127.0.0.1:${server.address().port}/`, { timeout: 30_000 });
    await page
      .locator("#answer:not(:empty)")
      .waitFor({ state: "attached", timeout: 30_000 })
      .catch((error) => {
        throw new Error(errors[0] ?? error.message);
      });
    return await use(page, { errors, version: browser.browser()?.version() ?? "of this machine" });
  } finally {
    await browser?.close();
    server.close();
    rmSync(profile, { recursive: true, force: true });
  }
}

/**
 * The text of the page in `folder`, its whole answer, and the browser's version; a picture of it goes to
 * `shot`.
 */
export const showInChromium = (playwright, folder, shot, missing) =>
  openInChromium(
    playwright,
    folder,
    async (page, { version }) => {
      const answer = await page.locator("#answer").textContent();
      const time = await page.locator("#time").innerText();
      await page.screenshot({ path: shot });
      return { time, answer, version };
    },
    missing,
  );
