/**
 * The JSON of the sheet is what its schema says, `server/sheet/sheet.schema.json`, and the schema says all of it.
 *
 * To add a field: write it in `server/sheet/data.ts`, give it its place among the keys in `server/sheet/json.ts` (it does
 * not compile without), and run this test. It prints the field as the schema wants it: put that under the "properties" of
 * its object, its name into "required" unless it may be missing, and one sentence for its description. A new interface
 * becomes an entry of "$defs" of the same name, and `{ "$ref": "#/$defs/Name" }` where it is used. A count is an
 * "integer" with its least value. A field is never taken out, and never made stricter: see Contracts in DEVELOPERS.md.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import Ajv2020 from "ajv/dist/2020";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Reader } from "../../server/plan";
import { evaluate, sheetOf } from "../../server/service";
import type { SheetData } from "../../server/sheet/data";
import { sheetJson } from "../../server/sheet/json";
import SCHEMA from "../../server/sheet/sheet.schema.json";
import { brokenSample, crossedPlan, madePlan, RUNS } from "../property/plans";
import { PATIENCE } from "./nasty";
import { ALL } from "./samples";
import { empty, trough } from "./trough";
import { differences, type Schema } from "./typed";

const DATA = join(__dirname, "../../server/sheet/data.ts");
const ajv = () => new Ajv2020({ strict: true, allErrors: true });
const open = ajv().compile(SCHEMA);
const strict = ajv().compile(closed(SCHEMA) as object);

/** What is wrong with the JSON of a sheet, by the schema with no field beyond those it names. */
function wrong(data: SheetData, validate = strict): string[] {
  validate(JSON.parse(sheetJson(data)));
  return (validate.errors ?? []).map((e) => `${e.instancePath} ${e.message} ${JSON.stringify(e.params)}`);
}

/** The schema with every object closed to fields that it does not name. */
function closed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(closed);
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).filter(([key]) => key !== "additionalProperties");
  const inner = Object.fromEntries(entries.map(([key, one]) => [key, closed(one)]));
  return inner.type === "object" && inner.properties ? { ...inner, unevaluatedProperties: false } : inner;
}

describe("the schema", () => {
  it("has every field of the types, and no other", () => {
    expect(differences(DATA, "SheetData", SCHEMA as Schema)).toEqual([]);
  });

  it("sees what differs, and says what to write", () => {
    const { title, ...others } = SCHEMA.properties;
    const { Place, ...defs } = SCHEMA.$defs;
    const properties = {
      ...others,
      make: title,
      beside: title,
      cautions: { ...others.cautions, items: title },
    };
    const less = {
      ...Place,
      required: ["file"],
      properties: { ...Place.properties, line: { type: "null" } },
    };
    const changed = { ...SCHEMA, properties, $defs: { ...defs, Place: less } };
    expect(differences(DATA, "SheetData", changed as Schema)).toMatchInlineSnapshot(`
      [
        "SheetData.title is not in the schema: add "title": {"description":"One sentence.","type":"string"}",
        "SheetData.make is number: write {"description":"One sentence.","type":"number"}",
        "Place.line is number: write {"description":"One sentence.","type":"number"}",
        "Place.line is always there: add it to "required"",
        "Place.column is always there: add it to "required"",
        "Place.endLine is always there: add it to "required"",
        "Place.endColumn is always there: add it to "required"",
        "SheetData.cautions[] is { readonly text: string; readonly source: string; }: write {"description":"One sentence.","type":"object","properties":{"text":{"description":"One sentence.","type":"string"},"source":{"description":"One sentence.","type":"string"}},"required":["text","source"]}",
        "SheetData.beside is in the schema only",
      ]
    `);
  });

  it("describes each field in a sentence", () => {
    const bare: string[] = [];
    const walk = (schema: unknown, path: string): void => {
      if (typeof schema !== "object" || schema === null) return;
      for (const [name, one] of Object.entries((schema as Schema).properties ?? {}))
        if (!/^[A-Z].*\S.*\.$/.test(one.description ?? "")) bare.push(`${path}.${name}`);
      for (const [name, one] of Object.entries((schema as Schema).$defs ?? {}))
        if (!one.description) bare.push(name);
      for (const [key, one] of Object.entries(schema)) walk(one, `${path}/${key}`);
    };
    walk(SCHEMA, "");
    expect(bare).toEqual([]);
  });

  it("is named by no address, ships with the program, and lets fields be added", () => {
    const { files } = JSON.parse(readFileSync(join(__dirname, "../../package.json"), "utf8"));
    expect(SCHEMA.$id).toBe("urn:sawbuck:sheet:1");
    expect(files).toContain("server/sheet/sheet.schema.json");
    expect(open({ ...trough, later: 1 })).toBe(true);
    expect(strict({ ...trough, later: 1 })).toBe(false);
    expect(open({ ...trough, make: "one" })).toBe(false);
  });
});

describe("the JSON of", () => {
  it.each(ALL)("$name", ({ sheet }) => {
    expect(wrong(sheet())).toEqual([]);
    expect(wrong(sheet(), open)).toEqual([]);
  });

  it("a sheet with everything on it, and one with nothing", () => {
    expect(wrong(trough)).toEqual([]);
    expect(wrong(empty)).toEqual([]);
  });

  it(
    "any plan",
    () => {
      const nothing: Reader = (path) => ({ file: path, refused: "there is no such file" });
      fc.assert(
        fc.property(fc.oneof(madePlan, brokenSample, crossedPlan), (text) => {
          expect(wrong(sheetOf(evaluate("plan.sawbuck", text, nothing)))).toEqual([]);
        }),
        { numRuns: Math.ceil(RUNS / 5) },
      );
    },
    PATIENCE,
  );
});
