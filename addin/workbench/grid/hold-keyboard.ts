import { DocSelectionRenderService } from "@univerjs/preset-sheets-core";

/**
 * The grid's hidden editor takes the keyboard each time it is drawn anew, also a moment after its user went
 * to another part of the page. From those parts it takes it no longer: they give it away themselves.
 */
export function holdKeyboard(others: readonly Element[]): void {
  const take = DocSelectionRenderService.prototype.focus;
  DocSelectionRenderService.prototype.focus = function (this: DocSelectionRenderService): void {
    if (!others.some((part) => part.contains(document.activeElement))) take.call(this);
  };
}
