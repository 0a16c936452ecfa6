import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { GridFile } from "../../../addin/workbench/grid-file";
import { keepWork } from "../../../addin/workbench/unsaved/keep-work";
import type { Drawer } from "../../../addin/workbench/unsaved/kept-work";

beforeEach(() => {
  vi.stubGlobal("document", { addEventListener: () => {} });
  vi.stubGlobal("addEventListener", () => {});
});
afterEach(() => vi.unstubAllGlobals());

const EDIT = { id: "sheet.mutation.set-range-values", params: {} };

async function keptOf(isEdited: boolean) {
  const begin = vi.fn(async () => {});
  const add = vi.fn(async () => {});
  const drawer: Drawer = { begin, add, empty: async () => {}, leftBehind: async () => [] };
  const log = { isWhole: true, bytes: new Uint8Array(1), edits: [EDIT] };
  const file = { isEdited, log, name: "may.xlsx", onEdited: () => {} } as unknown as GridFile;
  keepWork(file, drawer);
  await new Promise((done) => setImmediate(done));
  return { begin, add };
}

test("should keep what was typed before the browser's drawer was open, without another edit", async () => {
  const { begin, add } = await keptOf(true);
  expect(begin).toHaveBeenCalledWith(expect.objectContaining({ name: "may.xlsx" }));
  expect(add).toHaveBeenCalledWith([EDIT], expect.any(Number));
});

test("should keep nothing of a workbook that is as it was opened", async () => {
  const { begin } = await keptOf(false);
  expect(begin).not.toHaveBeenCalled();
});
