import { trialResiduals, type Yard } from "../../core/tickets";
import { printPage, type ScheduleHead } from "./print-page";
import { residualPlot } from "./residual-plot";
import { wallChart } from "./wall-chart";

/** The wall chart of the yard's compensated angles, and the trials it rests on; `firstRow` is the log's header row. */
export function trialLogPage(yard: Yard, firstRow: number, head: ScheduleHead): string {
  return printPage("Compensated angles", head, [
    wallChart(yard),
    residualPlot(trialResiduals(yard, firstRow)),
  ]);
}
