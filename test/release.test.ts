/* What is released and how: the manifest, the workflows and the CI script have to tell one story. */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";

const text = (path: string): string => readFileSync(path, "utf8");
interface Job {
  readonly steps: readonly { readonly run?: string; readonly uses?: string }[];
  readonly needs?: string;
  readonly container: string;
  readonly permissions?: object;
  readonly strategy: { readonly matrix: { readonly node: readonly number[] } };
}
interface Workflow {
  readonly on: object;
  readonly permissions: object;
  readonly jobs: Readonly<Record<"ci" | "pack" | "publish", Job>>;
}
interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license: string;
  readonly engines: { readonly node: string };
  readonly scripts: Readonly<Record<string, string>>;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly optionalDependencies: Readonly<Record<string, string>>;
}
interface Lock {
  readonly version: string;
  readonly packages: Readonly<
    Record<string, { readonly dev?: boolean; readonly hasInstallScript?: boolean }>
  >;
}

const manifest = JSON.parse(text("package.json")) as Manifest;
const lock = JSON.parse(text("package-lock.json")) as Lock;
const ci = parse(text(".github/workflows/ci.yml")) as Workflow;
const publish = parse(text(".github/workflows/publish.yml")) as Workflow;
const script = text(".ci/run");
const commands = (job: Job): string[] => job.steps.flatMap(({ run }) => (run === undefined ? [] : [run]));

describe("the workflows and .ci/run", () => {
  const matrix = ci.jobs.ci.strategy.matrix.node;
  it("check with .ci/run and nothing else", () => {
    expect(commands(ci.jobs.ci)).toEqual(["bash .ci/run"]);
    expect(commands(publish.jobs.pack)).toEqual([
      "bash .ci/run",
      'node test/tools/release.mjs "$GITHUB_REF_NAME" "$GITHUB_REPOSITORY"',
    ]);
  });
  it("hold the identity only where the packed file is published", () => {
    expect(publish.permissions).toEqual({});
    expect(publish.jobs.pack.permissions).toEqual({ contents: "read" });
    expect(publish.jobs.publish).toMatchObject({ needs: "pack", permissions: { "id-token": "write" } });
    expect(Object.keys(publish.jobs.publish.permissions!)).toEqual(["id-token"]);
    expect(commands(publish.jobs.publish)).toEqual([
      "npm publish ./package.tgz --ignore-scripts --provenance --access public",
    ]);
  });
  it("pin each action by the hash of a commit, with its version beside it", () => {
    const used = [ci, publish].flatMap(({ jobs }) =>
      Object.values(jobs).flatMap(({ steps }) => steps.flatMap(({ uses }) => uses ?? [])),
    );
    expect(used.length).toBe(4);
    for (const action of used) expect(action).toMatch(/^actions\/[a-z-]+@[0-9a-f]{40}$/);
    for (const path of [".github/workflows/ci.yml", ".github/workflows/publish.yml"])
      for (const line of text(path).match(/uses: .*/g)!) expect(line).toMatch(/# v\d+\.\d+\.\d+$/);
  });
  it("run on the Node versions that the package promises", () => {
    expect(matrix).toEqual([20, 22, 24]);
    expect(manifest.engines.node).toMatch(new RegExp(`^>=${matrix[0]!}\\.`));
    const newest = (JSON.parse(text("test/runtimes/package.json")) as Manifest).optionalDependencies[
      `node-${matrix.at(-1)!}`
    ];
    expect(newest).toMatch(new RegExp(`@${matrix.at(-1)!}\\.`));
    for (const { container } of [publish.jobs.pack, publish.jobs.publish])
      expect(container).toBe(`node:${matrix.at(-1)!}-bookworm`);
    expect(ci.jobs.ci.container).toBe("node:${{ matrix.node }}-bookworm");
  });
  it("publish on a version's tag, by identity, and hold no secret and no host", () => {
    expect(publish.on).toEqual({ push: { tags: ["v*"] } });
    expect(ci.permissions).toEqual({ contents: "read" });
    for (const path of [".github/workflows/ci.yml", ".github/workflows/publish.yml", ".ci/run"])
      expect(text(path)).not.toMatch(/secrets\.|_TOKEN|https?:|registry-url/);
  });
  it("name only scripts that exist, and run every check but that of the tests themselves, which takes many hours", () => {
    const named = [...script.matchAll(/^ *npm run (?:--silent )?([\w:]+)/gm)].map((match) => match[1]!);
    expect(named.filter((name) => manifest.scripts[name] === undefined)).toEqual([]);
    // The page's tests come in two parts.
    expect([...new Set(named)]).toEqual([
      ...["build:once", "test:slow", "seeds", "static", "built", "mutants", "bench", "pack:twice"],
      ...["notebooks", "fuzz", "page:test", "runtimes", "audit"],
    ]);
    expect(text("docs/RELEASING.md")).toContain("`npm run mutation`");
    expect(script.trimEnd().split("\n").at(-1)).toBe(
      "node test/tools/count.mjs reports/tests.json reports/slow.json",
    );
  });
});

describe("what is published", () => {
  it("runs nothing when it is installed", () => {
    const hooks = ["preinstall", "install", "postinstall", "prepare", "prepublish", "prepack", "postpack"];
    expect(hooks.filter((name) => name in manifest.scripts)).toEqual([]);
    const runtime = Object.entries(lock.packages).filter(
      ([path, entry]) => path !== "" && entry.dev !== true,
    );
    expect(runtime.length).toBeGreaterThanOrEqual(Object.keys(manifest.dependencies).length);
    expect(runtime.filter(([, entry]) => entry.hasInstallScript === true)).toEqual([]);
  });
  it("pins what it brings along", () => {
    expect(
      Object.values(manifest.dependencies).filter((version) => !/^\d+\.\d+\.\d+$/.test(version)),
    ).toEqual([]);
  });
  it("is cited as it is", () => {
    const citation = parse(text("CITATION.cff")) as { readonly authors: object };
    expect(citation).toMatchObject({
      "cff-version": "1.2.0",
      "title": manifest.name,
      "version": manifest.version,
      "license": manifest.license,
    });
    expect(citation.authors).toEqual([{ name: "darkroom-kinetics contributors" }]);
    expect(lock.version).toBe(manifest.version);
  });
  it("is released by written steps that name what exists", () => {
    const releasing = text("docs/RELEASING.md");
    expect(releasing).toContain("never a patch");
    const scripts = [...`${releasing}${text("SECURITY.md")}`.matchAll(/`npm run ([\w:]+)`/g)].map(
      (match) => match[1]!,
    );
    expect(scripts.filter((name) => name !== "accuracy" && manifest.scripts[name] === undefined)).toEqual([]);
    expect(releasing).toContain("node test/tools/release.mjs");
  });
  it("is refused while an address is blank, and names each blank", () => {
    const blanks = ["repository", "homepage", "bugs"].filter((field) => !(field in manifest));
    const { status, stdout } = spawnSync(process.execPath, ["test/tools/release.mjs", "v0.0.0"], {
      encoding: "utf8",
    });
    expect(status).toBe(1);
    expect(stdout).toContain("the tag is v0.0.0");
    for (const field of ["repository", "homepage", "bugs"])
      expect(stdout.includes(`no "${field}"`)).toBe(blanks.includes(field));
  });
});
