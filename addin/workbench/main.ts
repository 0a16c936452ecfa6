import "../pane/zod-without-eval";
import "./workbench.css";
import { isShopSheet } from "../../core/shop/is-shop-sheet";
import { openPane } from "../pane/open-pane";
import { printInFrame } from "../pane/print-in-frame";
import { saveText } from "../pane/save-text";
import { applyTheme, followSystemTheme } from "../pane/theme";
import { watchCellMessages } from "./cell-messages";
import { DEMO_NAME, demoWorkbook } from "./demo/demo-workbook";
import { watchDivider } from "./divider";
import { createGrid } from "./grid/create-grid";
import { createFlagOverlay } from "./grid/flag-overlay";
import { GridWorkbook } from "./grid/grid-workbook";
import { saveAs } from "./save-as";
import { Session } from "./session";

const part = (id: string): HTMLElement => {
  const element = document.getElementById(id);
  if (element === null) throw new Error(`the page has no element ${id}`);
  return element;
};

const grid = createGrid("grid");
const overlay = createFlagOverlay(grid);
const session = new Session(grid, overlay);
const workbook = new GridWorkbook(
  grid,
  overlay,
  () => session.protectedSheets,
  () => session.datesFrom1904,
);
watchCellMessages(grid, part("cell-message"));
watchDivider(part("divider"), part("pane"));
await session.open(demoWorkbook(), DEMO_NAME);
const { model, element } = await openPane(part("pane"), workbook, { print: printInFrame, save: saveText });
followSystemTheme((dark) => {
  applyTheme(element, dark);
  grid.setDark(dark);
});
// formulas that name a machine do not lean on the cells of the Shop sheet
workbook.onChange(({ sheet }) => {
  if (isShopSheet(sheet)) workbook.recalculate().catch((problem) => model.report(problem));
});
showName();
await model.check();

function showName(): void {
  part("file-name").textContent = session.name;
  document.title = `${session.name} - Barwright workbench`;
}

async function open(bytes: Uint8Array, name: string): Promise<void> {
  try {
    await session.open(bytes, name);
    showName();
    await model.workbookReplaced();
  } catch (problem) {
    model.report(problem);
  }
}

part("open-file").addEventListener("click", () => part("file-input").click());
part("file-input").addEventListener("change", async ({ target }) => {
  const input = target as HTMLInputElement;
  const file = input.files?.[0];
  if (file !== undefined) await open(new Uint8Array(await file.arrayBuffer()), file.name);
  input.value = "";
});
part("open-demo").addEventListener("click", () => void open(demoWorkbook(), DEMO_NAME));
part("save-file").addEventListener("click", () => {
  try {
    saveAs(session.save(), session.name);
    model.say(`${session.name} was saved as a copy`);
  } catch (problem) {
    model.report(problem);
  }
});
