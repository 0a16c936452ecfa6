import "../zod-without-eval";
import { createLocalEngine } from "./local-engine";
import { type EngineAnswer, type EngineRequest, unpackedCall } from "./packed-call";

const engine = createLocalEngine();

addEventListener("message", ({ data }: MessageEvent<EngineRequest>) => {
  const { number } = data;
  unpackedCall(engine, data.question).then(
    (result) => postMessage({ number, result } satisfies EngineAnswer),
    (problem: unknown) =>
      postMessage({
        number,
        problem: problem instanceof Error ? problem.message : String(problem),
      } satisfies EngineAnswer),
  );
});
