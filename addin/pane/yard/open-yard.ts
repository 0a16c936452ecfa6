import "./yard-element";
import type { WorkbookPort } from "../../workbook/workbook-port";
import type { PaneModel } from "../pane-model";
import type { PageHost } from "./page-host";
import { createWorkerYardDesk } from "./worker-yard-desk";
import type { YardElement } from "./yard-element";
import { YardModel } from "./yard-model";

/** Puts the yard's side into an open pane. */
export function openYard(pane: Element, model: PaneModel, workbook: WorkbookPort, host: PageHost): YardModel {
  const desk = createWorkerYardDesk(
    () => new Worker(/* webpackChunkName: "later-yard-desk" */ new URL("./yard.worker.ts", import.meta.url)),
  );
  const yard = new YardModel(workbook, model, desk, host);
  const element = document.createElement("barwright-yard") as YardElement;
  element.slot = "yard";
  element.model = yard;
  pane.append(element);
  return yard;
}
