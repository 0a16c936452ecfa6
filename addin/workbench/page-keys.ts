export interface PageKeys {
  save(): void;
  print(): void;
  /** the page's parts in the order that F6 goes through them */
  readonly parts: readonly PagePart[];
}

export interface PagePart {
  readonly holder: Element;
  focus(): void;
}

/** Ctrl+S saves a copy, Ctrl+P prints, F6 and Shift+F6 go from part to part of the page. */
export function watchPageKeys({ save, print, parts }: PageKeys): void {
  addEventListener(
    "keydown",
    (event) => {
      const isCtrl = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey;
      const act =
        event.key === "F6"
          ? () => goToPart(parts, event.shiftKey ? -1 : 1)
          : isCtrl && event.key.toLowerCase() === "s"
            ? save
            : isCtrl && event.key.toLowerCase() === "p"
              ? print
              : null;
      if (act === null) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      act();
    },
    { capture: true },
  );
}

function goToPart(parts: readonly PagePart[], by: 1 | -1): void {
  const at = parts.findIndex(({ holder }) => holder.contains(document.activeElement));
  const next = at < 0 && by < 0 ? parts.length - 1 : at + by;
  const part = parts[(next + parts.length) % parts.length];
  part?.focus();
  if (part?.holder instanceof HTMLElement && !part.holder.contains(document.activeElement)) {
    // nothing in it takes the keyboard at the moment
    part.holder.tabIndex = -1;
    part.holder.focus();
  }
}
