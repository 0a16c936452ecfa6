const STEP = 20;

/** Lets a separator set the width of the element after it, by pointer and by arrow keys. */
export function watchDivider(divider: HTMLElement, pane: HTMLElement): void {
  const least = Number(divider.getAttribute("aria-valuemin"));
  const most = Number(divider.getAttribute("aria-valuemax"));
  const width = (): number => Number(divider.getAttribute("aria-valuenow"));
  const set = (wanted: number): void => {
    const px = Math.round(Math.min(most, Math.max(least, wanted)));
    pane.style.setProperty("--pane-width", `${px}px`);
    divider.setAttribute("aria-valuenow", String(px));
    window.dispatchEvent(new Event("resize"));
  };
  divider.addEventListener("keydown", (event) => {
    const by = { ArrowLeft: STEP, ArrowRight: -STEP }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    set(width() + by);
  });
  divider.addEventListener("pointerdown", (event) => {
    divider.setPointerCapture(event.pointerId);
    const follow = (move: PointerEvent): void => set(document.documentElement.clientWidth - move.clientX);
    divider.addEventListener("pointermove", follow);
    divider.addEventListener("lostpointercapture", () => divider.removeEventListener("pointermove", follow), {
      once: true,
    });
  });
}
