/**
 * A sheet's tab that two quick clicks opened to be renamed is taken for held down: once it was renamed it hangs at
 * the page, out of the bar that it belongs to, and when its sheet goes the grid goes with it. It is let go as soon
 * as its editor is left.
 */
export function releaseTabs(): void {
  let mouse = 1;
  addEventListener(
    "pointerdown",
    ({ pointerId, pointerType }) => {
      if (pointerType === "mouse") mouse = pointerId;
    },
    true,
  );
  addEventListener(
    "focusout",
    ({ target }) => {
      const tab = target instanceof Element ? target.closest('[data-u-comp="slide-tab-item"]') : null;
      // once the grid has taken the name
      if (tab !== null)
        setTimeout(() => tab.dispatchEvent(new PointerEvent("pointerup", { pointerId: mouse })));
    },
    true,
  );
}
