import type { Priced } from "../../core/estimating";
import { printTable } from "./print-tonnage";
import type { Streams } from "./streams";

/** Hours and cost by the yard's own rates, under the tonnes that they stand apart from. */
export function printCosts(
  { pours, total }: Priced,
  groupedBy: string,
  streams: Streams,
  isSummary: boolean,
): void {
  const line = (name: string, { waste, hours, cost }: Priced["total"]): string[] => [
    name,
    waste.toFixed(3),
    hours?.toFixed(1) ?? "",
    cost?.toFixed(2) ?? "",
  ];
  streams.result("");
  streams.result("by the rates of the Shop sheet, beside the net tonnes");
  printTable(
    [
      [isSummary ? "" : groupedBy, "waste, t", "hours", "cost"],
      ...(isSummary ? [] : pours).map((each) => line(each.pour === "" ? `no ${groupedBy}` : each.pour, each)),
      line("total", total),
    ],
    streams,
  );
}
