import type { WorkbookPort } from "../../workbook/workbook-port";
import type { Engine } from "../engine/engine";
import type { Judge } from "./judge";
import type { PaneState } from "./pane-state";
import type { Patience } from "./patience";

/** What the parts of the pane's model share: the workbook, the state, and how work is said and failures told. */
export interface PaneHost {
  readonly workbook: WorkbookPort;
  readonly engine: Engine;
  readonly patience: Patience;
  readonly judge: Judge;
  state(): PaneState;
  set(change: Partial<PaneState>): void;
  guard(act: () => Promise<void>): Promise<void>;
  /** of what nobody asked for, only a failure is told */
  quietly(act: () => Promise<void>): Promise<void>;
  work(label: string, done?: number | null): void;
  say(text: string): void;
  chooseSheet(sheet: string): Promise<void>;
}
