import { LocaleService, LocaleType, mergeLocales, type Univer } from "@univerjs/core";
import { UniverSheetsFindReplacePreset } from "@univerjs/preset-sheets-find-replace";
import findWords from "@univerjs/preset-sheets-find-replace/locales/en-US";
import { UniverSheetsSortPreset } from "@univerjs/preset-sheets-sort";
import sortWords from "@univerjs/preset-sheets-sort/locales/en-US";
import filterWords from "@univerjs/sheets-filter/locale/en-US";
import { UniverSheetsFilterUIPlugin } from "@univerjs/sheets-filter-ui";
import filterMenuWords from "@univerjs/sheets-filter-ui/locale/en-US";
import functionWords from "@univerjs/sheets-formula/locale/en-US";
import { addFunctionTexts } from "./add-function-texts";
import type { FunctionText } from "./bar-functions";
import { sortRows } from "./sort-rows";
import "@univerjs/preset-sheets-find-replace/lib/index.css";
import "@univerjs/preset-sheets-sort/lib/index.css";
import "@univerjs/sheets-filter-ui/lib/index.css";

const { "sheets-sort-ui": sorting } = sortWords;
const ROWS_SORTED = {
  "sheets-sort-ui": {
    ...sorting,
    general: {
      ...sorting.general,
      "sort-asc-ext": "Rows, smallest first",
      "sort-desc-ext": "Rows, largest first",
    },
  },
};

/** Adds sorting, filtering by menu, finding and the help of functions to a grid in which a workbook stands. */
export async function addTools(
  univer: Univer,
  functions: readonly FunctionText[],
  say: (words: string) => void,
): Promise<void> {
  const words = mergeLocales(findWords, sortWords, ROWS_SORTED, filterWords, filterMenuWords, functionWords);
  const locale = univer.__getInjector().get(LocaleService);
  locale.load({ [LocaleType.EN_US]: words });
  const presets = [UniverSheetsSortPreset(), UniverSheetsFindReplacePreset()];
  for (const entry of [...presets.flatMap(({ plugins }) => plugins), UniverSheetsFilterUIPlugin]) {
    if (Array.isArray(entry)) univer.registerPlugin(...entry);
    else univer.registerPlugin(entry);
  }
  await sortRows(univer, say);
  // the words are read anew
  locale.setLocale(LocaleType.EN_US);
  addFunctionTexts(univer, functions);
}
