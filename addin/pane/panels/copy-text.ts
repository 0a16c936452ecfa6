import type { PaneModel } from "../model/pane-model";

/** Puts a text on the clipboard and says so, or says what to do where the page may not. */
export async function copyText(model: PaneModel, text: string, done: string): Promise<void> {
  try {
    await navigator.clipboard.writeText(text);
    model.say(done);
  } catch {
    model.report(new Error("the clipboard is closed to this page: select the text and copy it by hand"));
  }
}
