import { releaseTabs } from "./release-tabs";

/** What the grid's buttons do, which bear a drawing and no words, by the command that they give. */
const NAMES: Readonly<Record<string, string>> = {
  "univer.command.undo": "Undo",
  "univer.command.redo": "Redo",
  "sheet.command.set-once-format-painter": "Take looks over",
  "sheet.command.clear-selection-all": "Clear looks and contents",
  "sheet.command.set-range-font-increase": "Larger letters",
  "sheet.command.set-range-font-decrease": "Smaller letters",
  "sheet.command.set-range-bold": "Bold",
  "sheet.command.set-range-italic": "Italic",
  "sheet.command.set-range-underline": "Underline",
  "sheet.command.set-range-stroke": "Strike through",
  "sheet.command.numfmt.set.percent": "Per cent",
  "sheet.command.numfmt.set.currency": "Currency",
  "sheet.command.numfmt.add.decimal.command": "More decimals",
  "sheet.command.numfmt.subtract.decimal.command": "Fewer decimals",
  "base-ui.operation.toggle-shortcut-panel": "Keys of the sheet",
  "ui.operation.open-find-dialog": "Find and replace",
};

/** Other controls by where they stand. */
const PLACES: readonly (readonly [string, string])[] = [
  ['[data-u-comp="defined-name"] input', "Cell or name to go to"],
  ['[data-u-comp="ribbon-toolbar"] [data-u-comp="input"] input', "Size of letters"],
  ['[data-u-comp="ribbon-toolbar"] input', "Letters"],
  ['[aria-haspopup="menu"] > [data-u-comp="sheet-bar-append-button"]', "All sheets"],
  ['[data-u-comp="sheet-bar-append-button"]', "Add a sheet"],
  [':has(+ [role="track"]) button, button:has(+ [role="track"])', "Smaller view"],
  ['[role="track"] ~ button, [role="track"] ~ * button', "Larger view"],
  ["button:has(.univerjs-icon-reduce-icon)", "Smaller view"],
  ["button:has(.univerjs-icon-increase-icon)", "Larger view"],
  ["button:has(.univerjs-icon-close-icon)", "Close"],
  ['[role="track"] > a', "Middle of the view's size"],
  ['[role="track"] > button', "Size of the view"],
];

/**
 * The grid's own controls have no names, roles that there are none of, and stops of Tab out of sight. Until the
 * grid mends that itself it is mended here, and again after each change of them.
 */
export function mendControls(): void {
  let isDue = false;
  const mendSoon = (): void => {
    if (isDue) return;
    isDue = true;
    requestAnimationFrame(() => {
      isDue = false;
      mend();
    });
  };
  new MutationObserver(mendSoon).observe(document.body, { childList: true, subtree: true });
  releaseTabs();
  mend();
}

function mend(): void {
  const grid = document.getElementById("grid");
  if (grid === null) return;
  for (const [command, name] of Object.entries(NAMES)) label(grid, `[data-u-command="${command}"]`, name);
  for (const [place, name] of PLACES) label(grid, place, name);
  for (const opener of grid.querySelectorAll("a[aria-expanded]:not([href]):not([role])")) {
    opener.setAttribute("role", "button");
    if (!opener.hasAttribute("aria-label")) opener.setAttribute("aria-label", "Choose");
  }
  // a button within says that it opens a menu; what holds it has no role that could
  for (const holder of grid.querySelectorAll(
    "div[aria-haspopup]:not([role]), div[aria-expanded]:not([role])",
  )) {
    holder.setAttribute("role", "group");
    holder.removeAttribute("aria-haspopup");
    holder.removeAttribute("aria-expanded");
  }
  grid.querySelector('[role="track"]')?.setAttribute("role", "presentation");
  for (const handle of grid.querySelectorAll('[role="handle"]')) handle.setAttribute("role", "button");
  // a number above nought would come before all else of the page
  for (const canvas of grid.querySelectorAll("canvas[tabindex]")) canvas.setAttribute("tabindex", "-1");
  const [, ...toasts] = document.querySelectorAll("section[aria-live]");
  toasts.forEach((toast, at) => {
    toast.setAttribute("aria-label", `Notices ${at + 2}`);
  });
}

function label(grid: Element, place: string, name: string): void {
  for (const control of grid.querySelectorAll(place)) {
    if (!control.hasAttribute("aria-label")) control.setAttribute("aria-label", name);
  }
}
