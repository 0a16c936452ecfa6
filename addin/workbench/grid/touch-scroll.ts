/** px that a finger may tremble before it is taken to drag */
const TREMBLE = 8;

interface Drag {
  readonly id: number;
  readonly canvas: Element;
  x: number;
  y: number;
  isMoving: boolean;
}

/** A finger that is drawn over the cells moves the sheet under it; a tap selects, as a click does. */
export function scrollByTouch(container: HTMLElement): void {
  let drag: Drag | null = null;
  container.addEventListener(
    "pointerdown",
    (event) => {
      const { target, pointerType, pointerId, clientX, clientY } = event;
      const isCells = target instanceof HTMLCanvasElement && target.id.includes("sheet-main-canvas");
      if (pointerType !== "touch" || !isCells) return;
      drag = { id: pointerId, canvas: target, x: clientX, y: clientY, isMoving: false };
    },
    { capture: true },
  );
  addEventListener(
    "pointermove",
    (event) => {
      if (drag === null || event.pointerId !== drag.id || !event.isTrusted) return;
      event.stopImmediatePropagation();
      const [deltaX, deltaY] = [drag.x - event.clientX, drag.y - event.clientY];
      if (!drag.isMoving && Math.hypot(deltaX, deltaY) < TREMBLE) return;
      // the grid began to select at the finger's first touch
      if (!drag.isMoving) drag.canvas.dispatchEvent(new PointerEvent("pointerup", event));
      Object.assign(drag, { x: event.clientX, y: event.clientY, isMoving: true });
      const { clientX, clientY } = event;
      drag.canvas.dispatchEvent(
        new WheelEvent("wheel", { deltaX, deltaY, clientX, clientY, bubbles: true, cancelable: true }),
      );
    },
    { capture: true },
  );
  const end = (event: PointerEvent): void => {
    if (drag === null || event.pointerId !== drag.id || !event.isTrusted) return;
    if (drag.isMoving) event.stopImmediatePropagation();
    drag = null;
  };
  for (const kind of ["pointerup", "pointercancel"] as const) addEventListener(kind, end, { capture: true });
}
