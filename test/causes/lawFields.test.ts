/* An answer names each field of a law that it does not read. A misspelt spread would otherwise get its usual value. */
import { describe, expect, it } from "vitest";
import { compensate, learn, predict, startKnowledge } from "../../src/index.js";
import { causeSchemas } from "../../src/causes.js";
import { fieldsOfLaw } from "../../src/core/cause.js";
import { ORIGIN_FIELDS } from "../../src/core/term.js";
import type { JsonSchema } from "../../src/core/schema.js";
import { pairs, pairSchemas } from "../../src/pairs.js";

/** The fields of each kind of a law, by the schema; of one without kinds under no name. */
const fieldsOf = ({ anyOf, properties = {} }: JsonSchema): [string, Set<string>][] =>
  anyOf?.flatMap(fieldsOf) ?? [[String(properties["kind"]?.const ?? ""), new Set(Object.keys(properties))]];

describe("the fields of a law", () => {
  it.each([
    ...causeSchemas.map(({ cause, law }) => [cause, law()] as const),
    ...pairs.map((pair) => [pair, pairSchemas[pair.name]!()] as const),
  ])("of $name are those of its schema", ({ lawFields }, schema) => {
    const known = fieldsOf(schema).map(([kind]): [string, Set<string>] => [
      kind,
      new Set([...fieldsOfLaw(lawFields, { kind }), ...ORIGIN_FIELDS]),
    ]);
    expect(fieldsOf(schema)).toEqual(known);
  });

  const known = { timeS: 510, temperatureC: 20 };
  const misspelt = { kind: "arrhenius", activationEnergyKJPerMol: 60, sdKjPerMol: 40 } as const;
  const told = {
    code: "unknown-field",
    severity: "warn",
    path: "/knowledge/temperature/sdKjPerMol",
    data: { field: "sdKjPerMol", nearest: "sdKJPerMol" },
  };

  it("that is misspelt is told, in an answer", () => {
    const { cautions } = compensate(known, { temperatureC: 14 }, { temperature: misspelt });
    expect(cautions).toContainEqual(expect.objectContaining(told));
    const own = { ...misspelt, "x-from": "a friend" };
    expect(
      compensate(known, {}, { temperature: own }).cautions.filter(({ code }) => code === "unknown-field"),
    ).toHaveLength(1);
  });

  it("that belongs to another kind of it is told", () => {
    const life = { kind: "life", lifeH: 1.5, halfLifeH: 3 } as const;
    expect(compensate(known, { ageH: 1 }, { age: life }).cautions).toContainEqual(
      expect.objectContaining({ code: "unknown-field", path: "/knowledge/age/halfLifeH" }),
    );
  });

  it("that is misspelt is told, in what was learned with it", () => {
    const start = startKnowledge(known, { laws: { temperature: misspelt } });
    const learned = learn(start, [{ timeS: 700, temperatureC: 16, outcome: { kind: "good" } }]);
    expect(predict(learned, { temperatureC: 14 }).cautions).toContainEqual(expect.objectContaining(told));
  });
});
