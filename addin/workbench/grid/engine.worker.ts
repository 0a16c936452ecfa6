import "../../pane/zod-without-eval";
import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import { UniverSheetsCoreWorkerPreset } from "@univerjs/preset-sheets-core/worker";
import { UniverSheetsFilterPlugin } from "@univerjs/sheets-filter";
import { barFunctions, barFunctionTexts, surroundings } from "./bar-functions";
import { type FormulaResult, type FromEngine, isLinkOffer, type ToEngine } from "./engine-link";

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

addEventListener("message", (event) => {
  if (isLinkOffer(event.data)) open(event.data.barwrightLink);
});

function open(link: MessagePort): void {
  link.postMessage({ kind: "functions", functions: barFunctionTexts } satisfies FromEngine);
  let waiting: FormulaResult[] = [];
  surroundings.onResult = (place, messages, size) => {
    if (waiting.length === 0) {
      setTimeout(() => {
        link.postMessage({ kind: "results", results: waiting } satisfies FromEngine);
        waiting = [];
      });
    }
    waiting.push({ place, messages, ...size });
  };
  link.onmessage = ({ data }: MessageEvent<ToEngine>) => {
    surroundings.environment = data.environment;
    link.postMessage({ kind: "environment-taken" } satisfies FromEngine);
  };
}
