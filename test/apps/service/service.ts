// A service that answers with what is wrong in a folder of recipes, file by file and place by place.
import { readdirSync, readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { join } from "node:path";
import {
  checkRecipe,
  compensateRecipe,
  formatTime,
  planRecipe,
  roundEstimate,
  type CautionSeverity,
  type InputErrorCode,
} from "darkroom-kinetics";

/** One file of the folder. */
export interface Report {
  readonly file: string;
  readonly ok: boolean;
  readonly time?: string;
  readonly steps?: readonly string[];
  readonly problems: readonly {
    readonly code: InputErrorCode;
    readonly path: string;
    readonly line?: number;
    readonly column?: number;
    readonly message: string;
  }[];
  readonly cautions: readonly {
    readonly code: string;
    readonly severity: CautionSeverity;
    readonly path?: string;
  }[];
}

export function reportOf(folder: string): readonly Report[] {
  return readdirSync(folder)
    .sort()
    .map((file) => {
      const check = checkRecipe(readFileSync(join(folder, file), "utf8"));
      if (!check.ok)
        return {
          file,
          ok: false,
          problems: check.problems.map(({ code, path, line, column, message }) => ({
            code,
            path,
            ...(line === undefined ? {} : { line }),
            ...(column === undefined ? {} : { column }),
            message,
          })),
          cautions: [],
        };
      const answer = compensateRecipe(check.recipe);
      const plan = planRecipe(check.recipe, { vessel: "tray", movement: "rock" });
      return {
        file,
        ok: true,
        time: formatTime(roundEstimate(answer).timeS),
        steps: plan.steps.map(({ name }) => name),
        problems: [],
        cautions: check.cautions.map(({ code, severity, path }) => ({
          code,
          severity,
          ...(path === undefined ? {} : { path }),
        })),
      };
    });
}

export function serve(folder: string): Server {
  return createServer((_request, response) => {
    response.writeHead(200, { "content-type": "application/json" });
    response.end(JSON.stringify(reportOf(folder)));
  });
}
