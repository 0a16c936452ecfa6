import { engine } from "./early-engine";
import "../pane/zod-without-eval";
import "./workbench.css";
import { hasOwnName } from "../../core/own/own-sheet";
import { hasShopName } from "../../core/shop/has-shop-name";
import { EXAMPLES } from "../demo/examples";
import { openPane } from "../pane/open-pane";
import { printInFrame } from "../pane/print-in-frame";
import { saveText } from "../pane/save-text";
import { applyTheme, followSystemTheme } from "../pane/theme";
import { watchCellMessages } from "./cell-messages";
import { watchDivider } from "./divider";
import { firstStop } from "./first-stop";
import { createGrid, showToolbar } from "./grid/create-grid";
import { createFlagOverlay } from "./grid/flag-overlay";
import { GridWorkbook } from "./grid/grid-workbook";
import { holdKeyboard } from "./grid/hold-keyboard";
import { watchHands } from "./grid/watch-hands";
import { GridFile } from "./grid-file";
import { isSeparatedText } from "./is-separated-text";
import { keepOffline } from "./keep-offline";
import { watchPageKeys } from "./page-keys";
import { saveAs } from "./save-as";
import { ask } from "./unsaved/ask";
import { keepWork } from "./unsaved/keep-work";
import { type Drawer, openDrawer } from "./unsaved/kept-work";

/** ms */
const DRAWN = 60;
/** how many files were asked for */
let turns = 0;

const part = (id: string): HTMLElement => {
  const element = document.getElementById(id);
  if (element === null) throw new Error(`the page has no element ${id}`);
  return element;
};

holdKeyboard([part("strip"), part("pane")]);
const grid = createGrid("grid");
const overlay = createFlagOverlay(grid);
const shown = new GridFile(grid, overlay);
const workbook = new GridWorkbook(
  grid,
  overlay,
  () => shown.protectedSheets,
  () => shown.datesFrom1904,
);
watchCellMessages(grid, part("cell-message"), overlay);
watchDivider(part("divider"), part("pane"));
shown.onEdited(showName);
const [first] = EXAMPLES;
// the pane stands by the time that the formulas are calculated
const opened = shown.open(first.bytes(), first.fileName);
showToolbar(grid.univer, false);
watchHands(grid, part("grid"), (words) => model.say(words));
const { model, element, bringPlaces } = await openPane(part("pane"), workbook, engine);
followSystemTheme((dark) => {
  applyTheme(element, dark);
  overlay.setDark(dark);
  grid.setDark(dark);
});
// formulas do not lean on the cells of the sheets Shop and Standard
workbook.onChange(({ sheet }) => {
  if (hasShopName(sheet) || hasOwnName(sheet))
    workbook.recalculate().catch((problem) => model.report(problem));
});
watchPageKeys({
  save: () => void save(),
  print: () => void printSheet(),
  parts: [
    { holder: part("strip"), focus: () => part("open-file").focus() },
    { holder: part("grid"), focus: () => grid.focus() },
    { holder: part("pane"), focus: () => firstStop(element)?.focus() },
  ],
});
// what is clicked while the first check runs is done all the same
part("open-file").addEventListener("click", async () => {
  if (await mayLeave()) part("file-input").click();
});
part("file-input").addEventListener("change", async ({ target }) => {
  const input = target as HTMLInputElement;
  const file = input.files?.[0];
  if (file !== undefined) await open(file.arrayBuffer(), file.name);
  input.value = "";
});
part("open-example").addEventListener("click", () => void openExample());
part("save-file").addEventListener("click", () => void save());
// it holds the results of its formulas, so that the check waits for none
await model.check();
// list and flags are drawn first
await new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn, DRAWN)));
grid.bringRest();
void bringPlaces({ print: printInFrame, save: saveText });
// were a result another than the example holds, it would be judged as it is
if (await opened) await model.check();
const drawer = await openDrawer().catch(() => null);
const keepNow = drawer === null ? null : keepWork(shown, drawer);
await grid.bringTools((words) => model.say(words));
const { mendControls } = await import(/* webpackChunkName: "later-controls" */ "./grid/mend-controls");
mendControls();
const { takeTables } = await import(/* webpackChunkName: "later-tables" */ "./grid/take-tables");
takeTables(grid, shown);
document.body.dataset.tools = "brought";
if (drawer !== null && keepNow !== null) await offerWork(drawer, keepNow);
keepOffline();

function showName(): void {
  part("file-name").textContent = shown.name;
  part("file-state").hidden = !shown.isEdited;
  part("not-shown").textContent = shown.notShown;
  document.title = `${shown.isEdited ? "* " : ""}${shown.name} - Barwright workbench`;
}

/**
 * Shows a file and checks it; a text file is shown as the workbook that its cells make. Of several that are asked
 * for at the same time the last one is shown; false for one that is not.
 */
async function open(given: Uint8Array | Promise<ArrayBuffer>, name: string): Promise<boolean> {
  turns += 1;
  const turn = turns;
  // nothing that is known of the last workbook lies over the new one
  let replaced = Promise.resolve();
  const whenShown = (): void => {
    replaced = model.workbookReplaced();
  };
  try {
    const bytes = new Uint8Array(await given);
    if (turn !== turns) return false;
    if (isSeparatedText(bytes, name)) {
      const { workbookOfCsv } = await import(
        /* webpackChunkName: "later-text" */ "../xlsx/write/workbook-of-csv"
      );
      if (turn !== turns) return false;
      await shown.open(workbookOfCsv(bytes, name), name.replace(/\.[^.]*$/, ".xlsx"), whenShown);
    } else {
      await shown.open(bytes, name, whenShown);
    }
    if (turn !== turns) return false;
    await replaced;
    await model.check();
    dispatchEvent(new Event("barwright-opened"));
    return turn === turns;
  } catch (problem) {
    model.report(problem);
    return false;
  }
}

/** Prints the sheet in view with its flags. */
async function printSheet(): Promise<void> {
  try {
    const { sheetPage } = await import(/* webpackChunkName: "later-print" */ "./sheet-page");
    printInFrame(
      sheetPage(grid, overlay, {
        file: shown.name,
        standard: model.state.view?.standard.id ?? model.state.standard,
      }),
    );
  } catch (problem) {
    model.report(problem);
  }
}

async function openExample(): Promise<void> {
  const later = { key: "stay", words: "None of them" } as const;
  const offered = EXAMPLES.map(({ key, title, look }) => ({ key, words: title, note: look }));
  const [first, ...others] = offered;
  if (first === undefined) return;
  const chosen = await ask("Examples, of an invented yard", "Each opens as a copy of its own.", [
    { ...first, isUsual: true },
    ...others,
    later,
  ]);
  const example = EXAMPLES.find(({ key }) => key === chosen);
  if (example === undefined || !(await mayLeave())) return;
  if (await open(example.bytes(), example.fileName)) model.say(example.look);
}

/** False where the user would rather stay with the work that is not saved. */
async function mayLeave(): Promise<boolean> {
  if (!shown.isEdited) return true;
  const answer = await ask(
    "Your changes are not saved",
    `${shown.name} was changed since it was opened or saved. What opens now takes its place.`,
    [
      { key: "save", words: "Save a copy, then go on", isUsual: true },
      { key: "leave", words: "Go on without saving" },
      { key: "stay", words: "Stay here" },
    ],
  );
  return answer === "leave" || (answer === "save" && save());
}

/** Work that a crash, or a page closed over its warning, left in this browser. */
async function offerWork(kept: Drawer, keepNow: () => Promise<void>): Promise<void> {
  for (const { work, forget } of await kept.leftBehind()) {
    const when = new Date(work.at).toLocaleString();
    const answer = await ask(
      "Work that was not saved was found",
      `${work.name} was changed on ${when} and not saved. It was kept by this browser on this machine alone.`,
      [
        { key: "open", words: "Open it", isUsual: true },
        { key: "forget", words: "Throw it away" },
        { key: "later", words: "Ask again next time" },
      ],
    );
    if (answer === "later" || (answer === "open" && !(await mayLeave()))) return;
    if (answer === "open") {
      if (!(await open(work.bytes, work.name))) return;
      try {
        shown.doAgain(work.edits);
      } catch (problem) {
        // what is kept stays
        return model.report(problem);
      }
      shown.setEdited(true);
      await keepNow();
      await forget();
      await model.check();
      return;
    }
    await forget();
  }
}

async function save(): Promise<boolean> {
  try {
    // what stands in a cell's own editor is entered first
    await grid.api.getActiveWorkbook()?.endEditingAsync(true);
    saveAs(shown.save(), shown.name);
    shown.setEdited(false);
    model.say(`${shown.name} was saved as a copy`);
    return true;
  } catch (problem) {
    model.report(problem);
    return false;
  }
}
