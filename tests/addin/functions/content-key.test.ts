import fc from "fast-check";
import { expect, test } from "vitest";
import { contentKey } from "../../../addin/functions/content-key";
import type { Block } from "../../../core/formulas";

const cell = fc.oneof(
  fc.string(),
  fc.double({ noNaN: true }),
  fc.boolean(),
  fc.constant(null),
  fc.record({ error: fc.string() }),
);
const block = fc.array(fc.array(cell, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 4 });
const blocks = fc.array(fc.option(block, { nil: undefined }), { maxLength: 3 });

const key = (given: readonly (Block | undefined)[], standard = "BS8666:2005") =>
  contentKey("MASS", standard, given);

test("should be the same for the same content", () => {
  fc.assert(fc.property(blocks, (given) => key(given) === key(structuredClone(given))));
});

test("should differ where the content differs", () => {
  fc.assert(
    fc.property(blocks, blocks, (one, other) => {
      fc.pre(JSON.stringify(one) !== JSON.stringify(other));
      expect(key(one)).not.toBe(key(other));
    }),
  );
});

test("should part numbers from texts, blanks from nothing, rows from columns, and standards", () => {
  const keys = [
    key([[["1"]]]),
    key([[[1]]]),
    key([[[true]]]),
    key([[["TRUE"]]]),
    key([[[null]]]),
    key([undefined]),
    key([]),
    key([[["a", "b"]]]),
    key([[["a"], ["b"]]]),
    key([[["ab"]]]),
    key([[[{ error: "#REF!" }]]]),
    key([[["#REF!"]]]),
    key([[[1]]], "EC2:2004"),
  ];
  expect(new Set(keys).size).toBe(keys.length);
});

test("should tell columns apart by their height and cells, where their blank rows are one row", () => {
  const blank = [null];
  const keys = [
    key([[["a"], blank, blank, blank]]),
    key([[["a"], blank, blank]]),
    key([[["a"], ["b"], blank, blank]]),
    key([[blank, blank, blank, ["a"]]]),
    key([[blank, blank, blank, blank]]),
  ];
  expect(new Set(keys).size).toBe(keys.length);
});
