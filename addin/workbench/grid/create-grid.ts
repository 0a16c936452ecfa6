import { type IWorkbookData, LocaleType, LogLevel, mergeLocales, ThemeService, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import {
  BuiltInUIPart,
  CalculationMode,
  ILayoutService,
  IUIPartsService,
  UniverSheetsCorePreset,
} from "@univerjs/preset-sheets-core";
import english from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsFilterPlugin } from "@univerjs/sheets-filter";
import "@univerjs/preset-sheets-core/lib/index.css";
import type { FunctionEnvironment } from "../../../core/formulas";
import type { FunctionText } from "./bar-functions";
import type { FormulaResult, FromEngine, ToEngine } from "./engine-link";
import { lateWorker } from "./late-worker";

/** The embedded spreadsheet: its own interface, and the line to its calculating worker. */
export interface Grid {
  readonly univer: Univer;
  readonly api: FUniver;
  /**
   * What BAR functions ask of the workbook: its standard, its benders. Holds for all that is given to the grid
   * afterwards; resolves once the worker has it.
   */
  setEnvironment(environment: FunctionEnvironment): Promise<void>;
  /**
   * Brings what a first look at a sheet goes without: the toolbar, and the worker that calculates. Until then
   * cells keep the results that their file holds.
   */
  bringRest(): void;
  onResults(listener: (results: readonly FormulaResult[]) => void): void;
  /** Names of the BAR functions with their namespace; none until the worker has started. */
  functionNames(): readonly string[];
  /** Brings what no sheet needs to stand: sorting, filtering by menu, finding, the help of functions. */
  bringTools(say: (words: string) => void): Promise<void>;
  setDark(dark: boolean): void;
  /** Takes the keyboard, wherever it is. */
  focus(): void;
}

/** What a workbook file would not keep, or would spoil, is not offered. */
const NOT_OFFERED = Object.fromEntries(
  [
    "sheet.command.set-text-rotation",
    "sheet.command.set-tab-color",
    "sheet.command.toggle-gridlines",
    "sheet.command.add-range-protection-from-toolbar",
    "sheet.contextMenu.permission",
    "sheet.command.add-range-protection-from-context-menu",
    "sheet.command.set-range-protection-from-context-menu",
    "sheet.command.view-sheet-permission-from-context-menu",
    "sheet.command.add-range-protection-from-sheet-bar",
    "sheet.command.view-sheet-permission-from-sheet-bar",
    "sheet.command.change-sheet-protection-from-sheet-bar",
    "sheet.command.delete-worksheet-protection-from-sheet-bar",
    "sheet.command.set-range-subscript",
    "sheet.command.set-range-superscript",
    // a column that is sorted by itself is torn from its rows
    "sheet.command.sort-range-asc",
    "sheet.command.sort-range-asc-ctx",
    "sheet.command.sort-range-desc",
    "sheet.command.sort-range-desc-ctx",
    // it asks what to do with the rows' other cells, and does it
    "sheet.command.sort-range-custom",
    "sheet.command.sort-range-custom-ctx",
  ].map((id) => [id, { hidden: true }]),
);

/** An empty grid in the element of that id. Formulas are calculated in a worker. */
export function createGrid(container: string): Grid {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(english) },
    logLevel: LogLevel.ERROR,
  });
  const { worker, start } = lateWorker(() => new Worker(new URL("./engine.worker.ts", import.meta.url)));
  const preset = UniverSheetsCorePreset({
    container,
    workerURL: worker,
    disableAutoFocus: true,
    // beside a pane on a tablet it would leave the sheets' tabs no width
    footer: { zoomSlider: !matchMedia("(max-width: 1000px)").matches },
    ribbonType: "simple",
    menu: NOT_OFFERED,
    formula: {
      // a stored result may be another program's, or of another standard
      initialFormulaComputing: CalculationMode.FORCED,
    },
    sheets: { disableForceStringMark: true, disableForceStringAlert: true },
    // marks and shape codes are texts on purpose: no corner of theirs needs a mark
    disableTextFormatMark: true,
  });
  for (const entry of [...preset.plugins, UniverSheetsFilterPlugin]) {
    if (Array.isArray(entry)) univer.registerPlugin(...entry);
    else univer.registerPlugin(entry);
  }
  const link = openLink(worker);
  const hearers: ((results: readonly FormulaResult[]) => void)[] = [];
  let taken: (() => void)[] = [];
  let functions: readonly FunctionText[] = [];
  let known = (_functions: readonly FunctionText[]): void => {};
  const started = new Promise<readonly FunctionText[]>((resolve) => {
    known = resolve;
  });
  link.onmessage = ({ data }: MessageEvent<FromEngine>) => {
    if (data.kind === "results") {
      for (const hear of hearers) hear(data.results);
    } else if (data.kind === "functions") {
      functions = data.functions;
      known(functions);
    } else taken.shift()?.();
  };
  return {
    univer,
    api: FUniver.newAPI(univer),
    setEnvironment: (environment) =>
      new Promise((resolve) => {
        taken = [...taken, resolve];
        worker.postMessage({ barwrightEnvironment: environment } satisfies ToEngine);
      }),
    bringRest() {
      start();
      showToolbar(univer, true);
    },
    onResults: (listener) => {
      hearers.push(listener);
    },
    functionNames: () => functions.map(({ name }) => name),
    async bringTools(say) {
      const { addTools } = await import(/* webpackChunkName: "later-tools" */ "./add-tools");
      await addTools(univer, await started, say);
    },
    setDark: (dark) => univer.__getInjector().get(ThemeService).setDarkMode(dark),
    focus() {
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      univer.__getInjector().get(ILayoutService).focus();
    },
  };
}

/** To be called once a first workbook is open: the grid has no parts before. */
export function showToolbar(univer: Univer, isShown: boolean): void {
  univer.__getInjector().get(IUIPartsService).setUIVisible(BuiltInUIPart.TOOLBAR, isShown);
}

function openLink(worker: Worker): MessagePort {
  const { port1, port2 } = new MessageChannel();
  worker.postMessage({ barwrightLink: port2 } satisfies ToEngine, [port2]);
  return port1;
}

/** Replaces whatever workbook is open. */
export function openInGrid(grid: Grid, data: IWorkbookData): void {
  const open = grid.api.getActiveWorkbook();
  if (open) grid.api.disposeUnit(open.getId());
  grid.api.createWorkbook(data);
}
