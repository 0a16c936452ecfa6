import "./zod-without-eval";
import "./define-controls";
import "./pane-element";
import type { WorkbookPort } from "../workbook/workbook-port";
import type { AuditDesk } from "./desk/audit-desk";
import { createWorkerDesk } from "./desk/worker-desk";
import type { PaneElement } from "./pane-element";
import { PaneModel } from "./pane-model";
import type { PageHost } from "./yard/page-host";

export interface OpenPane {
  readonly model: PaneModel;
  readonly element: PaneElement;
}

/**
 * Puts the pane into a place of the page, over any workbook. Audits run in a worker of the page's own
 * origin. The theme is the page's to choose, by `applyTheme`. What a `PageHost` is for, the yard's side,
 * is loaded once the pane stands.
 */
export async function openPane(place: Element, workbook: WorkbookPort, host?: PageHost): Promise<OpenPane> {
  const model = new PaneModel(workbook, workerDesk());
  const element = document.createElement("barwright-pane") as PaneElement;
  element.model = model;
  place.replaceChildren(element);
  await model.start();
  if (host !== undefined) void addYard(element, model, workbook, host);
  return { model, element };
}

async function addYard(
  element: PaneElement,
  model: PaneModel,
  workbook: WorkbookPort,
  host: PageHost,
): Promise<void> {
  try {
    const { openYard } = await import(/* webpackChunkName: "later-yard" */ "./yard/open-yard");
    openYard(element, model, workbook, host);
  } catch {
    model.report(
      new Error("tonnage, tickets and revisions could not be loaded: close the pane and open it again"),
    );
  }
}

function workerDesk(): AuditDesk {
  return createWorkerDesk(() => new Worker(new URL("./desk/desk.worker.ts", import.meta.url)));
}
