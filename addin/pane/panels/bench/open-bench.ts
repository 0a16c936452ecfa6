import "./bench-element";
import type { WorkbookPort } from "../../../workbook/workbook-port";
import type { Engine } from "../../engine/engine";
import { BenchModel } from "../../model/bench-model";
import type { PaneModel } from "../../model/pane-model";
import type { PoursModel } from "../../model/pours-model";
import type { BenchElement } from "./bench-element";

/** Puts what the person at the bender needs into an open pane. */
export function openBench(
  pane: Element,
  model: PaneModel,
  workbook: WorkbookPort,
  engine: Engine,
  pours: PoursModel,
): BenchModel {
  const bench = new BenchModel(workbook, model, engine, () => pours.printNow("wall chart"));
  const element = document.createElement("barwright-bench") as BenchElement;
  element.slot = "bench";
  element.model = bench;
  pane.append(element);
  return bench;
}
