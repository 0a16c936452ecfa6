import "../../pane/zod-without-eval";
import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import { UniverSheetsCoreWorkerPreset } from "@univerjs/preset-sheets-core/worker";
import { UniverSheetsFilterPlugin } from "@univerjs/sheets-filter";
import { barFunctions, barFunctionTexts, surroundings } from "./bar-functions";
import { type FormulaResult, type FromEngine, isToEngine } from "./engine-link";
import { followNames } from "./follow-names";

/** Calculates the grid's formulas off the page's thread. */
const univer = new Univer({
  locale: LocaleType.EN_US,
  locales: { [LocaleType.EN_US]: {} },
  logLevel: LogLevel.ERROR,
});
const preset = UniverSheetsCoreWorkerPreset({ formula: { function: barFunctions } });
for (const entry of [...preset.plugins, UniverSheetsFilterPlugin]) {
  if (Array.isArray(entry)) univer.registerPlugin(...entry);
  else univer.registerPlugin(entry);
}
followNames(univer);

let link: MessagePort | undefined;

addEventListener("message", ({ data }) => {
  if (!isToEngine(data)) return;
  if ("barwrightLink" in data) {
    link = data.barwrightLink;
    open(link);
  } else {
    surroundings.environment = data.barwrightEnvironment;
    link?.postMessage({ kind: "environment-taken" } satisfies FromEngine);
  }
});

function open(link: MessagePort): void {
  link.postMessage({ kind: "functions", functions: barFunctionTexts } satisfies FromEngine);
  let waiting: FormulaResult[] = [];
  surroundings.onResult = (place, messages, block) => {
    if (waiting.length === 0) {
      setTimeout(() => {
        link.postMessage({ kind: "results", results: waiting } satisfies FromEngine);
        waiting = [];
      });
    }
    waiting.push({ place, messages, ...block });
  };
}
