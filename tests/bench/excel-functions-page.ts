import { readDefaultStandardBy } from "../../addin/functions/default-standard";
import * as functions from "../../addin/functions/functions";
import { ownSheet } from "../../addin/functions/own-sheet";
import { ownOfSheets } from "../../core/own/index";
import { sheetFromRows } from "../../core/schedule/sheet";
import type { FakeExcel } from "../_support/office-host/fake-excel";
import { type Argument, FILLED, TIMED_CALLS } from "./excel-functions.data";

const { fakeExcel } = window as unknown as { readonly fakeExcel: FakeExcel };
const at = { begun: 0, done: 0, failed: "" };

readDefaultStandardBy(async () => null);
// an invented project's laps
const LAPS = [["size", "lap"], ...[8, 10, 12, 16, 20, 25].map((size) => [size, 50 * size])];
const own = ownOfSheets([sheetFromRows("Standard", LAPS)]) ?? undefined;
ownSheet.readBy(async () => own);

for (const [name, code] of Object.entries(functions)) {
  const call = code as (...given: unknown[]) => Promise<unknown[][]>;
  CustomFunctions.associate(name.toUpperCase(), async (...given: unknown[]) => {
    at.begun = performance.now();
    try {
      return await call(...given);
    } catch (problem) {
      // Office.js drops the words of what is no error of its own
      at.failed = String(problem);
      throw problem;
    } finally {
      at.done = performance.now();
    }
  });
}

/** One call of a function: its columns are so many rows, of which 10,000 are filled. ms by whose they are. */
async function callInStages(place: number, rows: number, call: number): Promise<Record<string, number>> {
  const { id, given, answers } = TIMED_CALLS[place]!;
  const handed = given.map((argument) => handedOver(argument, rows, call));
  const { bridge } = fakeExcel;
  const receive = bridge.onMessageFromHost?.bind(bridge);
  let arrived = 0;
  bridge.onMessageFromHost = (text) => {
    arrived ||= performance.now();
    receive?.(text);
  };
  const began = performance.now();
  const answer = await fakeExcel.functions.call(id, ...handed);
  const ended = performance.now();
  Object.assign(bridge, { onMessageFromHost: receive });
  const block = answer.value as unknown[][];
  if (!answer.ok || (answers !== undefined && block.length !== answers))
    throw new Error(
      `${id}: ${answer.ok ? `${block.length} rows` : `${answer.errorCode} ${String(answer.value)} ${at.failed}`}`,
    );
  return {
    "the host's writing of the message, ms": arrived - began,
    "Office.js's reading of it, ms": at.begun - arrived,
    "the add-in's own, ms": at.done - at.begun,
    "Office.js's wait and answer, ms": ended - at.done,
  };
}

function handedOver(argument: Argument, rows: number, call: number): unknown[][] | null {
  if (argument === null) return null;
  if (typeof argument !== "object") return [[argument]];
  if ("table" in argument) return argument.table.map((row) => [...row]);
  const rowOf = "column" in argument ? (row: number) => [argument.column(row, call)] : argument.columns;
  const blank = () => rowOf(0, call).map(() => "");
  return Array.from({ length: rows }, (_, row) => (row < FILLED ? [...rowOf(row, call)] : blank()));
}

Object.assign(window, { callInStages });
