import { expect, it } from "vitest";
import { poursAlikeWords } from "../../../core/totals/pours-alike";

it("asks of pours that spaces, signs or case alone part", () => {
  expect(poursAlikeWords(["P1", "P2", "P 1", "p-1"])).toEqual([
    `pours written "P1", "P 1", "p-1" are counted apart: are they one pour?`,
  ]);
  expect(poursAlikeWords(["P1", "P2", "P10", "", ""])).toEqual([]);
});
