/*
 * What --help says.
 */
import { safetyText } from "../index.js";

export const HELP: string = `darkroom-kinetics: how long to develop now

darkroom-kinetics time FILE...    the times of a recipe, or of the baths of a day file
darkroom-kinetics check FILE...   whether the files are sound, with line and column of what is not
darkroom-kinetics plan FILE...    a recipe from pour-in to wash
darkroom-kinetics chart FILE...   times over temperature and dilution
darkroom-kinetics brew FILE...    what can be brewed from a list of what is on the shelf

FILE is JSON; - is standard input.

  --temperature 14      in °C unless it says °F; for chart, again for each line, or 12..24
  --dilution 1+14       today's dilution; for chart, again for each column
  --vessel tray         for plan: tank, tray (or dish) or drum
  --volume "500 ml"     for plan: the volume of each bath; for brew: how much
  --notes notes.csv     for time, plan and chart: learn from a table of notes, as a spreadsheet saves it
  --material, --developer   which rows of the notes, by the names in their columns
  --material plate      for brew: film, plate or paper
  --csv, --wall         for chart: a table for a spreadsheet, or one A4 page to print, as SVG
  --svg                 for chart: one answer as a picture with its ladder of causes
  --bath "Sunday"       for chart --svg: which bath of a day, by its name or number
  --json                the answer as data
  --strict              exit with 1 where there is something to take care of or to stop for
  --lang de             the language of the answer: en or de
  --unit F              temperatures shown in °F, and --temperature read in °F; temperatureC stays in °C
  --help, --version

Exit: 0 all is well, 1 something is unwise (--strict only), 2 a file is wrong, 3 the command line is wrong.
${safetyText}
`;
