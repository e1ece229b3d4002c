/*
 * Checks executed notebooks, for run.sh: `lost FILE` that every showing cell has all its outputs, `compare
 * FOLDER EXECUTED` that the committed outputs are those of today, `write FOLDER EXECUTED` puts today's in
 * their place.
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const joined = (text) => (Array.isArray(text) ? text.join("") : text);
const codeCells = (notebook) =>
  notebook.cells
    .map((cell, i) => ({ ...cell, at: i + 1, code: joined(cell.source) }))
    .filter(({ cell_type: type }) => type === "code");
const read = (path) => JSON.parse(readFileSync(path, "utf8"));

/** What a cell says it shows: each display as one output, all that is printed as one more. */
function promised({ code }) {
  return (
    [...code.matchAll(/^await (?:show|table|plot)\(/gm)].length + (/\bconsole\.log\(/.test(code) ? 1 : 0)
  );
}

/**
 * The outputs of a cell: displays in their order, and what was printed as one text however many pieces it
 * came in.
 */
function shown({ outputs }) {
  const displays = outputs
    .filter(({ data }) => data !== undefined)
    .map(({ data }) => Object.fromEntries(Object.entries(data).map(([kind, text]) => [kind, joined(text)])));
  const printed = outputs
    .filter(({ name }) => name === "stdout")
    .map(({ text }) => joined(text))
    .join("");
  return [...displays, ...(printed === "" ? [] : [{ stdout: printed }])];
}

/** What is wrong with an executed notebook. */
function faults(notebook) {
  const cells = codeCells(notebook);
  const showing = cells.filter((cell) => promised(cell) > 0);
  return [
    ...(showing.length < 5 ? [`only ${showing.length} showing cells`] : []),
    ...cells.flatMap((cell) => {
      const found = [];
      if (cell.execution_count === null) found.push(`cell ${cell.at} was not executed`);
      for (const { output_type: type, name, ename, evalue } of cell.outputs) {
        if (type === "error") found.push(`cell ${cell.at} threw ${ename}: ${evalue}`);
        if (name === "stderr") found.push(`cell ${cell.at} wrote to the error stream`);
      }
      if (shown(cell).length !== promised(cell))
        found.push(`cell ${cell.at} has ${shown(cell).length} of its ${promised(cell)} outputs`);
      if (/\b(?:NaN|undefined|Infinity)\b/.test(JSON.stringify(shown(cell))))
        found.push(`cell ${cell.at} shows a value that is no number`);
      return found;
    }),
  ];
}

/** Where the committed outputs differ from today's. */
function differences(committed, executed) {
  const [before, now] = [codeCells(committed), codeCells(executed)];
  return now.flatMap((cell, i) =>
    JSON.stringify(shown(cell)) === JSON.stringify(shown(before[i]))
      ? []
      : [`cell ${cell.at} gives another output than the one committed`],
  );
}

const [, , mode, ...paths] = process.argv;
const said = [];
if (mode === "lost")
  said.push(...faults(read(paths[0])).map((fault) => `${paths[0].split("/").at(-1)}: ${fault}`));
else {
  const [folder, out] = paths;
  for (const file of readdirSync(folder).filter((name) => name.endsWith(".ipynb"))) {
    const [committed, executed] = [read(join(folder, file)), read(join(out, file))];
    if (mode === "write") {
      // Only the cells are taken over: the rest tells of the machine it ran on.
      writeFileSync(
        join(folder, file),
        `${JSON.stringify({ ...committed, cells: executed.cells }, null, 1)}\n`,
      );
    } else
      said.push(
        ...[...faults(committed), ...differences(committed, executed)].map((fault) => `${file}: ${fault}`),
      );
    const cells = codeCells(executed);
    const outputs = cells.reduce((sum, cell) => sum + shown(cell).length, 0);
    console.log(
      `${file}: ${cells.length} cells executed, ${outputs} outputs${mode === "write" ? ", written" : ""}`,
    );
  }
  if (said.length > 0) said.push("npm run notebooks -- --write takes today's outputs");
}
for (const line of said) console.error(line);
if (said.length > 0) process.exitCode = 1;
