import "./zod-without-eval";
import "./define-controls";
import "./panels/pane-element";
import type { WorkbookPort } from "../workbook/workbook-port";
import type { Engine } from "./engine/engine";
import { startEngine } from "./engine/start-engine";
import { PaneModel } from "./model/pane-model";
import type { PageHost } from "./page-host";
import type { PaneElement } from "./panels/pane-element";

export interface OpenPane {
  readonly model: PaneModel;
  readonly element: PaneElement;
  /** Loads pours and bench, which no check waits for. */
  bringPlaces(host: PageHost): Promise<void>;
}

/**
 * Puts the pane into a place of the page, over any workbook. One engine serves all of it. The theme is the page's to choose, by `applyTheme`.
 */
export async function openPane(
  place: Element,
  workbook: WorkbookPort,
  engine: Engine = startEngine(),
): Promise<OpenPane> {
  const model = new PaneModel(workbook, engine);
  const element = document.createElement("barwright-pane") as PaneElement;
  element.model = model;
  place.replaceChildren(element);
  await model.start();
  return { model, element, bringPlaces: (host) => bringPlaces(element, model, workbook, engine, host) };
}

async function bringPlaces(
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
