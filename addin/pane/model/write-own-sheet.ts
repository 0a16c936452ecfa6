import { hasOwnName } from "../../../core/own/own-sheet";
import type { WorkbookPort } from "../../workbook/workbook-port";
import type { Engine } from "../engine/engine";
import type { PaneModel } from "./pane-model";

/** Name of the sheet on which a yard keeps what it looked up. */
const OWN_SHEET = "Standard";

/** Adds the sheet Standard, to be filled in or out of a file; goes to the one that is there, which is never written over. */
export async function writeOwnSheet(
  workbook: WorkbookPort,
  engine: Engine,
  pane: PaneModel,
  sheet: string,
  file: Uint8Array | null,
): Promise<void> {
  const known = (await workbook.sheets()).find(({ name }) => hasOwnName(name));
  if (known !== undefined) {
    await workbook.goTo(known.name, "A1");
    if (file === null) return;
    throw new Error(`sheet ${known.name} is there already: give it another name first, then take the file's`);
  }
  const name = await workbook.addSheet(OWN_SHEET, await engine.ownSheet(sheet, file));
  await pane.sheetsChanged();
  const what =
    file === null
      ? "fill in what you read in the document, with name and date; what stays blank changes nothing"
      : "its figures and shapes are in force from now on";
  pane.say(`Sheet ${name} was added: ${what}`);
}
