import { readDefaultStandardBy } from "../../addin/functions/default-standard";
import { developed } from "../../addin/functions/functions";
import type { FakeExcel } from "../_support/office-host/fake-excel";

const FILLED = 10_000;
const { fakeExcel } = window as unknown as { readonly fakeExcel: FakeExcel };
const at = { begun: 0, done: 0 };

readDefaultStandardBy(async () => null);
CustomFunctions.associate("DEVELOPED", async (...given: Parameters<typeof developed>) => {
  at.begun = performance.now();
  const answer = await developed(...given);
  at.done = performance.now();
  return answer;
});

/** One call of two columns of which 10,000 rows are filled: ms by whose they are. */
async function callInStages(rows: number, firstLeg: number): Promise<Record<string, number>> {
  const column = (value: string) => Array.from({ length: rows }, (_, row) => [row < FILLED ? value : ""]);
  const [shapes, sizes] = [column(`${firstLeg} +90 1200`), column("H16")];
  const { bridge } = fakeExcel;
  const receive = bridge.onMessageFromHost?.bind(bridge);
  let arrived = 0;
  bridge.onMessageFromHost = (text) => {
    arrived ||= performance.now();
    receive?.(text);
  };
  const began = performance.now();
  const one = (value: unknown) => [[value]];
  const answer = await fakeExcel.functions.call(
    "DEVELOPED",
    shapes,
    sizes,
    null,
    one("BS8666:2005"),
    one(64),
    null,
  );
  const ended = performance.now();
  Object.assign(bridge, { onMessageFromHost: receive });
  if (!answer.ok || (answer.value as unknown[]).length !== FILLED) throw new Error(String(answer.value));
  return {
    "the host's writing of the message, ms": arrived - began,
    "Office.js's reading of it, ms": at.begun - arrived,
    "the add-in's own, ms": at.done - at.begun,
    "Office.js's wait and answer, ms": ended - at.done,
  };
}

Object.assign(window, { callInStages });
