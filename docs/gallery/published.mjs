/*
 * The published figures in test/reference, for a script that runs on plain Node: each is typed in once, in TypeScript.
 */
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

/** The exports of test/reference/NAME.ts. */
export async function published(name) {
  const entry = fileURLToPath(new URL(`../../test/reference/${name}.ts`, import.meta.url));
  const { outputFiles } = await build({
    entryPoints: [entry],
    bundle: true,
    write: false,
    format: "esm",
    platform: "neutral",
    logLevel: "error",
  });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString("base64")}`);
}
