import type { Engine } from "./engine";
import { createWorkerEngine } from "./worker-engine";

/** The page's engine, in a worker of the page's own origin; its code is brought at once. */
export function startEngine(): Engine {
  const engine = createWorkerEngine(() => new Worker(new URL("./engine.worker.ts", import.meta.url)));
  // where its code cannot be brought the first check says so
  engine.forget().catch(() => undefined);
  return engine;
}
