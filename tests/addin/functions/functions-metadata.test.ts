import { readFile } from "node:fs/promises";
import { beforeAll, describe, expect, test } from "vitest";
import * as functions from "../../../addin/functions/functions";
import { type FunctionsMetadata, functionsMetadata } from "../../../addin/functions/functions-metadata";
import { WORKSHEET_FUNCTIONS } from "../../../core/formulas";
import frozen from "./frozen-functions.json";

const BASE = "https://bars.example.com/tools";

let metadata: FunctionsMetadata;
beforeAll(async () => {
  metadata = await functionsMetadata(BASE);
});

const parameters = (id: string) => metadata.functions.find((one) => one.id === id)?.parameters ?? [];

describe("functions.json", () => {
  test("holds every exported function once, so that none was lost by its way of writing", async () => {
    const source = await readFile(new URL("../../../addin/functions/functions.ts", import.meta.url), "utf8");
    const written = [...source.matchAll(/@customfunction ([A-Z0-9.]+)/g)].map((match) => match[1]);
    expect(metadata.functions.map((one) => one.id)).toEqual(written);
    expect(written.length).toBe(Object.keys(functions).length);
    for (const { id } of metadata.functions) expect(Object.keys(functions)).toContain(id.toLowerCase());
  });

  test("holds what core answers, with the same arguments and words", () => {
    expect(metadata.functions.map((one) => one.id)).toEqual([...WORKSHEET_FUNCTIONS.keys()]);
    for (const { name, description, args } of WORKSHEET_FUNCTIONS.values()) {
      const stated = metadata.functions.find((one) => one.id === name);
      expect(stated?.description, name).toBe(description);
      expect(
        stated?.parameters.map((one) => [one.name, one.optional === true, one.description]),
        name,
      ).toEqual(args.map((one) => [one.name, one.optional, one.description]));
    }
  });

  test("spills every result and takes a range of anything for every argument", () => {
    for (const { id, result, parameters } of metadata.functions) {
      expect(result.dimensionality, id).toBe("matrix");
      for (const { name, type, dimensionality } of parameters) {
        expect([type, dimensionality], `${id} ${name}`).toEqual(["any", "matrix"]);
      }
    }
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
  });

  test("names no function like a cell, in either way of writing one, or with an underscore", () => {
    for (const { id, name } of metadata.functions) {
      expect(name).toBe(id);
      expect(id).toMatch(/^[A-Z][A-Z0-9.]{2,63}$/);
      expect(id, "A1 style").not.toMatch(/^[A-Z]{1,3}\d+$/);
      expect(id, "R1C1 style").not.toMatch(/^(R\d*C\d*|R|C)$/);
    }
  });

  test("has optional arguments last, and words that fit the wizard", () => {
    for (const { id, description, parameters } of metadata.functions) {
      expect(description.length, id).toBeGreaterThan(10);
      expect(description.length, id).toBeLessThanOrEqual(128);
      const optional = parameters.map((one) => one.optional === true);
      expect(optional, id).toEqual([...optional].sort());
      for (const one of parameters) {
        expect(one.description.length, `${id} ${one.name}`).toBeGreaterThan(3);
        expect(one.description.length, `${id} ${one.name}`).toBeLessThanOrEqual(128);
      }
    }
  });

  test("sends help to a page below the address of the deployment", () => {
    for (const { id, helpUrl } of metadata.functions) {
      expect(helpUrl).toBe(`${BASE}/taskpane/functions.html#${id}`);
    }
  });

  /** Names and arguments stand in users' workbooks: a change here breaks their formulas. */
  test("keeps released names, and their arguments in order; new ones only at the end", () => {
    for (const [id, args] of Object.entries(frozen)) {
      const now = parameters(id);
      expect(
        now.slice(0, args.length).map((one) => one.name),
        id,
      ).toEqual(args);
      expect(
        now.slice(args.length).every((one) => one.optional),
        id,
      ).toBe(true);
    }
    expect(metadata.functions.map((one) => one.id).filter((id) => !(id in frozen))).toEqual([]);
  });
});
