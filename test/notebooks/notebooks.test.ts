/* The committed notebooks, without Jupyter: every showing cell has its outputs and none threw. Executing them is for `npm run notebooks`. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

const folder = "docs/notebooks";
const files = readdirSync(folder).filter((file) => file.endsWith(".ipynb"));
const check = (path: string): { status: number | null; stderr: string } =>
  spawnSync("node", ["test/notebooks/check.mjs", "lost", path], { encoding: "utf8" });

/** The first notebook with its last output changed. */
function spoiled(change: (cell: { outputs: unknown[]; execution_count: number | null }) => void): string {
  const notebook = JSON.parse(readFileSync(join(folder, files[0]!), "utf8")) as {
    cells: { outputs?: unknown[]; execution_count: number | null }[];
  };
  const cell = notebook.cells.filter(({ outputs }) => (outputs?.length ?? 0) > 0).pop() as {
    outputs: unknown[];
    execution_count: number | null;
  };
  change(cell);
  const path = join(mkdtempSync(join(tmpdir(), "notebook-")), "spoiled.ipynb");
  writeFileSync(path, JSON.stringify(notebook));
  return path;
}

describe("the committed notebooks", () => {
  it("are three", () => {
    expect(files).toEqual(["adjusted-times.ipynb", "many-evenings.ipynb", "personal-recipe.ipynb"]);
  });
  it.each(files)("%s has all its outputs", (file) => {
    expect(check(join(folder, file))).toMatchObject({ status: 0, stderr: "" });
  });
  it("would be found out if an output were lost, a cell had thrown, or one had not run", () => {
    const lost = check(spoiled((cell) => cell.outputs.pop()));
    expect([lost.status, lost.stderr]).toEqual([
      1,
      expect.stringMatching(/^spoiled\.ipynb: cell \d+ has 0 of its 1 outputs\n$/),
    ]);
    const threw = check(
      spoiled((cell) => cell.outputs.push({ output_type: "error", ename: "RangeError", evalue: "no" })),
    );
    expect([threw.status, threw.stderr]).toEqual([
      1,
      expect.stringMatching(/^spoiled\.ipynb: cell \d+ threw RangeError: no\n$/),
    ]);
    const skipped = check(spoiled((cell) => (cell.execution_count = null)));
    expect([skipped.status, skipped.stderr]).toEqual([
      1,
      expect.stringMatching(/^spoiled\.ipynb: cell \d+ was not executed\n$/),
    ]);
  });
});
