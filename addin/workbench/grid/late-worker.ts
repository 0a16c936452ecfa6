/**
 * A worker whose code is not brought before `start` is called; until then it keeps what it is told. It passes for
 * a worker with those who ask whether it is one.
 */
export function lateWorker(make: () => Worker): { readonly worker: Worker; start(): void } {
  let begun: Worker | null = null;
  const waiting: ((begun: Worker) => void)[] = [];
  const tell = (act: (begun: Worker) => void): void => {
    if (begun === null) waiting.push(act);
    else act(begun);
  };
  const worker = Object.assign(Object.create(Worker.prototype) as Worker, {
    postMessage(message: unknown, transferred: Transferable[] = []) {
      if (begun !== null) return begun.postMessage(message, transferred);
      // as it is now, whatever becomes of it meanwhile
      const told: unknown = structuredClone(message, { transfer: transferred });
      waiting.push((late) => late.postMessage(told, portsOf(told)));
    },
    addEventListener: (...given: Parameters<Worker["addEventListener"]>) =>
      tell((late) => late.addEventListener(...given)),
    removeEventListener: (...given: Parameters<Worker["removeEventListener"]>) =>
      tell((late) => late.removeEventListener(...given)),
    terminate: () => tell((late) => late.terminate()),
  });
  return {
    worker,
    start() {
      if (begun !== null) return;
      begun = make();
      for (const act of waiting.splice(0)) act(begun);
    },
  };
}

/** The ports among a message's own values: they are handed on, not copied. */
function portsOf(message: unknown): MessagePort[] {
  const values = typeof message === "object" && message !== null ? Object.values(message) : [];
  return values.filter((value) => value instanceof MessagePort);
}
