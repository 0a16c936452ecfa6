import "../zod-without-eval";
import { unpackBesides, unpackSheet } from "../desk/packed-sheet";
import { createLocalYardDesk } from "./local-yard-desk";
import type { PackedQuestion, YardAnswer, YardRequest } from "./worker-yard-desk";
import type { YardQuestion } from "./yard-desk";

const desk = createLocalYardDesk();

addEventListener("message", ({ data }: MessageEvent<YardRequest>) => {
  answer(data.question).then(
    (result) => postMessage({ number: data.number, result } satisfies YardAnswer),
    (problem: unknown) =>
      postMessage({
        number: data.number,
        problem: problem instanceof Error ? problem.message : String(problem),
      } satisfies YardAnswer),
  );
});

async function answer(packed: PackedQuestion) {
  const { sheet, shop, besides, standard, settings } = packed.about;
  const question: YardQuestion = {
    sheet: unpackSheet(sheet),
    shop: shop === null ? null : unpackSheet(shop),
    besides: unpackBesides(besides),
    standard,
    settings,
  };
  if (packed.kind === "totals") return desk.totals(question);
  if (packed.kind === "findings") return desk.findings(question);
  if (packed.kind === "page") return desk.page(packed.page, question);
  const { older } = packed;
  return desk.compare(question, older instanceof Uint8Array ? older : unpackSheet(older));
}
