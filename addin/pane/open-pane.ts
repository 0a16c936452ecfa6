import "./zod-without-eval";
import "./define-controls";
import "./pane-element";
import type { AuditDesk } from "./desk/audit-desk";
import { createWorkerDesk } from "./desk/worker-desk";
import type { PaneElement } from "./pane-element";
import { PaneModel } from "./pane-model";
import type { WorkbookPort } from "./workbook-port";

export interface OpenPane {
  readonly model: PaneModel;
  readonly element: PaneElement;
}

/**
 * Puts the pane into a place of the page, over any workbook. Audits run in a worker of the page's own
 * origin unless another desk is given. The theme is the page's to choose, by `applyTheme`.
 */
export async function openPane(place: Element, workbook: WorkbookPort, desk?: AuditDesk): Promise<OpenPane> {
  const model = new PaneModel(workbook, desk ?? workerDesk());
  const element = document.createElement("barwright-pane") as PaneElement;
  element.model = model;
  place.replaceChildren(element);
  await model.start();
  return { model, element };
}

function workerDesk(): AuditDesk {
  return createWorkerDesk(new Worker(new URL("./desk/desk.worker.ts", import.meta.url)));
}
