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

/** books sent to a worker at once, so that it need not wait for the next one */
const ON_THEIR_WAY = 2;

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
      const asked: number[] = [];
      const send = (): void => {
        if (next < paths.length) {
          asked.push(next);
          worker.postMessage(paths[next]);
          next += 1;
        } else if (asked.length === 0) worker.terminate().then(() => resolve(), reject);
      };
      worker.on("message", (answer: BookAnswer) => {
        answers[asked.shift()!] = answer;
        done += 1;
        onAnswer(done);
        send();
      });
      worker.on("error", reject);
      for (let book = 0; book < ON_THEIR_WAY; book += 1) send();
    });
  await Promise.all(Array.from({ length: Math.min(workers, paths.length) }, one));
  return answers;
}
