import {
  DeviceInputEventType,
  IDescriptionService,
  IEditorBridgeService,
  IEditorService,
  IShortcutService,
  KeyCode,
  SetCellEditVisibleOperation,
} from "@univerjs/preset-sheets-core";
import type { Grid } from "./create-grid";

/** Before every shortcut of the grid's own. */
const FIRST = 10_000;
const NAME = /[A-Za-z][A-Za-z0-9._]*$/;

type Found = ReturnType<IDescriptionService["getSearchListByNameFirstLetter"]>;

/**
 * Offers functions by any part of their name while one is typed, BAR functions first. The grid follows what
 * is typed a moment late: Enter and Tab within that moment enter the cell, and take no function that was
 * offered for an earlier word.
 */
export function searchFunctions(grid: Grid): void {
  const injector = grid.univer.__getInjector();
  const descriptions = injector.get(IDescriptionService);
  let searched = "";
  const byBeginning = descriptions.getSearchListByNameFirstLetter.bind(descriptions);
  descriptions.getSearchListByNameFirstLetter = (word) => {
    searched = word;
    const begins = byBeginning(word);
    const names = new Set(begins.map(({ name }) => name));
    const parts = descriptions.getSearchListByName(word).flatMap((found): Found => {
      const functionType = descriptions.getFunctionInfo(found.name)?.functionType;
      return names.has(found.name) || functionType === undefined ? [] : [{ ...found, functionType }];
    });
    const isOurs = ({ name }: Found[number]): boolean => name.startsWith("BAR.");
    return [...begins, ...parts.filter(isOurs), ...parts.filter((found) => !isOurs(found))];
  };
  const editors = injector.get(IEditorService);
  const bridge = injector.get(IEditorBridgeService);
  const isLate = (): boolean => {
    const editor = editors.getFocusEditor();
    const [range] = editor?.getSelectionRanges() ?? [];
    if (!bridge.isVisible().visible || !editor || range === undefined) return false;
    const text = editor.getDocumentData().body?.dataStream.slice(0, range.startOffset) ?? "";
    return text.startsWith("=") && (NAME.exec(text)?.[0] ?? "").toUpperCase() !== searched.toUpperCase();
  };
  for (const keycode of [KeyCode.ENTER, KeyCode.TAB]) {
    injector.get(IShortcutService).registerShortcut({
      id: SetCellEditVisibleOperation.id,
      binding: keycode,
      priority: FIRST,
      preconditions: isLate,
      staticParameters: { visible: false, eventType: DeviceInputEventType.Keyboard, keycode },
    });
  }
}
