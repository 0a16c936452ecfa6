/** What a worker sends back: the result of the question of that number, or why there is none. */
export type WorkerAnswer<Result> =
  | { readonly number: number; readonly result: Result }
  | { readonly number: number; readonly problem: string };

/** A question on its way to a worker. */
export interface WorkerRequest<Question> {
  readonly number: number;
  readonly question: Question;
}

export interface WorkerAsker<Question, Result> {
  ask(question: Question): Promise<Result>;
  /** Ends the worker with all that it was asked; the next question makes another. */
  stop(): void;
}

/** Asks a worker, which is made at the first question; answers find their askers by number. */
export function workerAsker<Question, Result>(makeWorker: () => Worker): WorkerAsker<Question, Result> {
  const waiting = new Map<number, { resolve(result: Result): void; reject(problem: Error): void }>();
  let count = 0;
  let worker: Worker | null = null;
  const failAll = (message: string): void => {
    for (const asker of waiting.values()) asker.reject(new Error(message));
    waiting.clear();
  };
  const open = (): Worker => {
    const opened = makeWorker();
    opened.onmessage = ({ data }: MessageEvent<WorkerAnswer<Result>>) => {
      const asker = waiting.get(data.number);
      waiting.delete(data.number);
      if ("problem" in data) asker?.reject(new Error(data.problem));
      else asker?.resolve(data.result);
    };
    opened.onerror = ({ message }) => failAll(message);
    return opened;
  };
  return {
    ask: (question) =>
      new Promise((resolve, reject) => {
        count += 1;
        waiting.set(count, { resolve, reject });
        worker ??= open();
        worker.postMessage({ number: count, question } satisfies WorkerRequest<Question>);
      }),
    stop() {
      worker?.terminate();
      worker = null;
      failAll("it was stopped");
    },
  };
}
