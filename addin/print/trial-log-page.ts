import type { Workshop } from "../../core/shop";
import { trialResiduals } from "../../core/tickets";
import { type PageHead, printPage } from "./print-page";
import { residualPlot } from "./residual-plot";
import { wallChart } from "./wall-chart";

/** The wall chart of the yard's compensated angles, and the trials it rests on; `firstRow` is the log's header row. */
export function trialLogPage(workshop: Workshop, firstRow: number, head: PageHead): string {
  return printPage("Compensated angles", head, [
    wallChart(workshop),
    residualPlot(trialResiduals(workshop, firstRow)),
  ]);
}
