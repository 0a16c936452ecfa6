import "./zod-without-eval";
import "./define-controls";
import "./panels/pane-element";
import type { WorkbookPort } from "../workbook/workbook-port";
import type { Engine } from "./engine/engine";
import { createWorkerEngine } from "./engine/worker-engine";
import { PaneModel } from "./model/pane-model";
import type { PageHost } from "./page-host";
import type { PaneElement } from "./panels/pane-element";

export interface OpenPane {
  readonly model: PaneModel;
  readonly element: PaneElement;
}

/**
 * Puts the pane into a place of the page, over any workbook. One engine in a worker of the page's own
 * origin serves all of it. The theme is the page's to choose, by `applyTheme`. What a `PageHost` is for,
 * pours and pages, is loaded once the pane stands.
 */
export async function openPane(place: Element, workbook: WorkbookPort, host?: PageHost): Promise<OpenPane> {
  const engine = createWorkerEngine(() => new Worker(new URL("./engine/engine.worker.ts", import.meta.url)));
  const model = new PaneModel(workbook, engine);
  const element = document.createElement("barwright-pane") as PaneElement;
  element.model = model;
  place.replaceChildren(element);
  await model.start();
  if (host !== undefined) void addPours(element, model, workbook, engine, host);
  return { model, element };
}

async function addPours(
  element: PaneElement,
  model: PaneModel,
  workbook: WorkbookPort,
  engine: Engine,
  host: PageHost,
): Promise<void> {
  try {
    const { openPours } = await import(/* webpackChunkName: "later-pours" */ "./panels/pours/open-pours");
    const pours = openPours(element, model, workbook, engine, host);
    const { openBench } = await import(/* webpackChunkName: "later-bench" */ "./panels/bench/open-bench");
    openBench(element, model, workbook, engine, pours);
  } catch {
    model.report(
      new Error("tonnage, tickets and revisions could not be loaded: close the pane and open it again"),
    );
  }
}
