import "./taskpane.css";
import { hasOwnName } from "../../core/own/own-sheet";
import { hasShopName } from "../../core/shop/has-shop-name";
import { forgetDefaultStandard, readDefaultStandardBy } from "../functions/default-standard";
import { ownSheet } from "../functions/own-sheet";
import { shopSheet } from "../functions/shop-sheet";
import { ownOfWorkbook } from "../pane/model/own-of-workbook";
import { shopOfWorkbook } from "../pane/model/shop-of-workbook";
import { openPane } from "../pane/open-pane";
import { saveText } from "../pane/save-text";
import { applyTheme } from "../pane/theme";
import { SETTING_NAMES } from "../workbook/setting-names";
import type { Unsubscribe, WorkbookPort } from "../workbook/workbook-port";
import { excelWorkbook } from "./excel-workbook";
import { followOfficeTheme } from "./office-theme";

/** The page of the shared runtime: the pane and the worksheet functions live in it together. */
const place = document.getElementById("pane");
if (place === null) throw new Error("the page has no place for the pane");

const workbook = excelWorkbook();
readDefaultStandardBy(async () => {
  await Office.onReady();
  return workbook.setting(SETTING_NAMES.standard);
});

shopSheet.readBy(async () => {
  await Office.onReady();
  return shopOfWorkbook(workbook);
});

ownSheet.readBy(async () => {
  await Office.onReady();
  return ownOfWorkbook(workbook);
});

const { host } = await Office.onReady();
if (host === Office.HostType.Excel) await openInExcel(place);
else sayOutside(place);

async function openInExcel(place: Element): Promise<void> {
  const own = untilClosed(withFreshStandard(workbook));
  followShopSheet(own);
  const { element, bringPlaces } = await openPane(place, own);
  // the pane of Excel on the desktop has no print dialogue
  void bringPlaces({ print: null, save: saveText });
  followOfficeTheme((dark) => applyTheme(element, dark));
}

/** The functions' memory of the workbook's standard ends where the pane saves another. */
function withFreshStandard(workbook: WorkbookPort): WorkbookPort {
  return {
    ...workbook,
    async saveSetting(name, value) {
      await workbook.saveSetting(name, value);
      forgetDefaultStandard();
    },
  };
}

/** Formulas do not lean on the cells of the sheets Shop and Standard: they are told when those change. */
function followShopSheet(workbook: WorkbookPort): void {
  workbook.onChange(({ sheet }) => {
    const isAsked = hasShopName(sheet) ? shopSheet.forget() : hasOwnName(sheet) && ownSheet.forget();
    if (!isAsked) return;
    workbook
      .recalculate()
      .catch((error: unknown) => console.error("BAR formulas were not recalculated", error));
  });
}

/** Takes every listener off the workbook when the page goes. */
function untilClosed(workbook: WorkbookPort): WorkbookPort {
  const listeners: Unsubscribe[] = [];
  const kept = (unsubscribe: Unsubscribe): Unsubscribe => {
    listeners.push(unsubscribe);
    return unsubscribe;
  };
  addEventListener("pagehide", () => {
    for (const unsubscribe of listeners) unsubscribe();
  });
  return {
    ...workbook,
    onSelection: (listener) => kept(workbook.onSelection(listener)),
    onChange: (listener) => kept(workbook.onChange(listener)),
    onSheets: (listener) => kept(workbook.onSheets(listener)),
  };
}

function sayOutside(place: Element): void {
  const words = document.createElement("p");
  words.className = "outside";
  words.textContent =
    "This page is Barwright's pane for Excel (2021, or Microsoft 365): open it from the Home tab there. Without Excel, use the workbench.";
  place.replaceChildren(words);
}
