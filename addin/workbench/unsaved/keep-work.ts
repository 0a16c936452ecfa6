import type { GridFile } from "../grid-file";
import type { EditLog } from "./edit-log";
import type { Drawer } from "./kept-work";

/** ms in which edits are gathered before they are put away */
const TOGETHER = 250;

/**
 * Puts each edit away as it is made, beside the file as it was opened, and takes all out again once the work
 * is saved. Answers how to put away at once what is not yet.
 */
export function keepWork(file: GridFile, drawer: Drawer): () => Promise<void> {
  let isDue = false;
  let kept: { readonly log: EditLog; count: number } | null = null;
  const put = async (): Promise<void> => {
    const { log, isEdited, name } = file;
    if (!isEdited || log === null) return;
    if (!log.isWhole) {
      await drawer.begin({ name, bytes: file.save(), at: Date.now() });
      kept = null;
      return;
    }
    if (kept?.log !== log) {
      await drawer.begin({ name, bytes: log.bytes, at: Date.now() });
      kept = { log, count: 0 };
    }
    const edits = log.edits.slice(kept.count);
    if (edits.length === 0) return;
    kept.count += edits.length;
    await drawer.add(edits, Date.now());
  };
  let line = Promise.resolve();
  const inLine = (act: () => Promise<void>): Promise<void> => {
    // a full disk keeps the last work
    line = line.then(act).catch(() => {
      kept = null;
    });
    return line;
  };
  file.onEdited(() => {
    if (file.isEdited) {
      if (isDue) return;
      isDue = true;
      setTimeout(() => {
        isDue = false;
        void inLine(put);
      }, TOGETHER);
      return;
    }
    void inLine(async () => {
      kept = null;
      await drawer.empty();
    });
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void inLine(put);
  });
  addEventListener("beforeunload", (event) => {
    if (file.isEdited) event.preventDefault();
  });
  // what was typed before the drawer was open
  if (file.isEdited) void inLine(put);
  return () => inLine(put);
}
