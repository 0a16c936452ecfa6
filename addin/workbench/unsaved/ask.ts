import { html, nothing, render } from "lit";

export interface Answer<Key extends string> {
  readonly key: Key;
  readonly words: string;
  /** what it is about, under it */
  readonly note?: string;
  /** the one that Enter gives */
  readonly isUsual?: boolean;
}

/** Asks in a dialog of the page's own; Escape gives the last answer. */
export function ask<Key extends string>(
  title: string,
  words: string,
  answers: readonly [Answer<Key>, ...Answer<Key>[]],
): Promise<Key> {
  const dialog = document.createElement("dialog");
  dialog.className = "ask";
  dialog.setAttribute("aria-labelledby", "ask-title");
  const last = answers.at(-1) ?? answers[0];
  return new Promise((resolve) => {
    const give = (key: Key): void => {
      // closed before it goes, so that the focus is where it was
      dialog.close();
      dialog.remove();
      resolve(key);
    };
    dialog.addEventListener("cancel", () => give(last.key));
    render(
      html`<h2 id="ask-title">${title}</h2>
        <p>${words}</p>
        <div class="answers">
          ${answers.map(
            ({ key, words: label, note, isUsual }) =>
              html`<fluent-button
                data-answer=${key}
                appearance=${isUsual ? "primary" : "outline"}
                ?autofocus=${isUsual}
                @click=${() => give(key)}
                >${label}</fluent-button
              >${note === undefined ? nothing : html`<p class="note">${note}</p>`}`,
          )}
        </div>`,
      dialog,
    );
    document.body.append(dialog);
    dialog.showModal();
  });
}
