import "../zod-without-eval";
import { createLocalDesk } from "./local-desk";
import { unpackBesides, unpackSheet } from "./packed-sheet";
import type { DeskAnswer, DeskQuestion, DeskRequest } from "./worker-desk";

const desk = createLocalDesk();

addEventListener("message", ({ data }: MessageEvent<DeskRequest>) => {
  answer(data.question).then(
    (result) => postMessage({ number: data.number, result } satisfies DeskAnswer),
    (problem: unknown) =>
      postMessage({ number: data.number, problem: wordsOf(problem) } satisfies DeskAnswer),
  );
});

async function answer(question: DeskQuestion) {
  if (question.kind === "bar") return desk.bar(question.sheet, question.row);
  if (question.kind === "forget") {
    await desk.forget();
    return null;
  }
  if (question.kind === "recheck") {
    const { sheet, firstRow, lastRow } = question;
    return desk.recheck({ sheet: unpackSheet(sheet), firstRow, lastRow });
  }
  const { sheet, shop, besides, standard, settings } = question;
  return desk.audit({
    sheet: unpackSheet(sheet),
    shop: shop === null ? null : unpackSheet(shop),
    besides: unpackBesides(besides),
    standard,
    settings,
  });
}

function wordsOf(problem: unknown): string {
  return problem instanceof Error ? problem.message : String(problem);
}
