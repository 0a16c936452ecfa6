import "./pours-element";
import type { WorkbookPort } from "../../../workbook/workbook-port";
import type { Engine } from "../../engine/engine";
import type { PaneModel } from "../../model/pane-model";
import { PoursModel } from "../../model/pours-model";
import type { PageHost } from "../../page-host";
import type { PoursElement } from "./pours-element";

/** Puts what is made of a schedule into an open pane. */
export function openPours(
  pane: Element,
  model: PaneModel,
  workbook: WorkbookPort,
  engine: Engine,
  host: PageHost,
): PoursModel {
  const pours = new PoursModel(workbook, model, engine, host);
  const element = document.createElement("barwright-pours") as PoursElement;
  element.slot = "pours";
  element.model = pours;
  pane.append(element);
  return pours;
}
