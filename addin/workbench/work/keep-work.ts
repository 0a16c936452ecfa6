import type { Session } from "../session";
import type { Drawer } from "./kept-work";

/** ms without an edit before the work is put away, and the share of time that this may take */
const QUIET = 1_500;
const SHARE = 20;

/** Puts work that is not saved away after each edit, and takes it out again once it is saved. */
export function keepWork(session: Session, drawer: Drawer): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let pause = QUIET;
  const put = async (): Promise<void> => {
    if (!session.isEdited) return;
    const start = performance.now();
    try {
      await drawer.put({ name: session.name, bytes: session.save(), at: Date.now() });
    } catch {
      // a state that cannot be saved says so when its user saves; a full disk keeps the last work
    }
    pause = Math.max(QUIET, (performance.now() - start) * SHARE);
  };
  session.onEdited(() => {
    clearTimeout(timer);
    if (session.isEdited) timer = setTimeout(() => void put(), pause);
    else void drawer.empty();
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void put();
  });
  addEventListener("beforeunload", (event) => {
    if (session.isEdited) event.preventDefault();
  });
}
