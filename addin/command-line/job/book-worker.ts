import { parentPort, Worker, workerData } from "node:worker_threads";
import { type BookAnswer, BookDigester, type JobTask } from "./digest-file";
import { ResultStore } from "./result-store";

interface WorkerStart {
  readonly task: JobTask;
  readonly folder: string;
  readonly version: string;
}

/** What a worker thread of a job does: it reads the books that it is sent, one after another. */
export function serveBooks(): void {
  const { task, folder, version } = workerData as WorkerStart;
  const digester = new BookDigester(new ResultStore(folder, version), task);
  parentPort?.on("message", (path: string) => parentPort?.postMessage(digester.answer(path)));
}

/** Reads books with several workers; the answers stand in the order of the paths. */
export async function answerByWorkers(
  paths: readonly string[],
  workers: number,
  script: URL,
  start: WorkerStart,
  onAnswer: (done: number) => void,
): Promise<BookAnswer[]> {
  const answers: BookAnswer[] = [];
  let next = 0;
  let done = 0;
  const one = (): Promise<void> =>
    new Promise((resolve, reject) => {
      const worker = new Worker(script, { workerData: start });
      let at = -1;
      const send = (): void => {
        at = next;
        next += 1;
        if (at < paths.length) worker.postMessage(paths[at]);
        else worker.terminate().then(() => resolve(), reject);
      };
      worker.on("message", (answer: BookAnswer) => {
        answers[at] = answer;
        done += 1;
        onAnswer(done);
        send();
      });
      worker.on("error", reject);
      send();
    });
  await Promise.all(Array.from({ length: Math.min(workers, paths.length) }, one));
  return answers;
}
