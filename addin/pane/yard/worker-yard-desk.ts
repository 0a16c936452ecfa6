import type { SheetContent } from "../../workbook/workbook-port";
import { type WorkerAnswer, type WorkerRequest, workerAsker } from "../ask-worker";
import { NO_BESIDES } from "../desk/besides";
import { type PackedBesides, type PackedSheet, packBesides, packSheet } from "../desk/packed-sheet";
import type { ComparisonView } from "./comparison-view";
import type { PrintedPage } from "./printed-page";
import type { TotalsView } from "./totals-view";
import type { PageKind, YardDesk, YardQuestion } from "./yard-desk";

interface PackedAbout {
  readonly sheet: PackedSheet;
  readonly shop: PackedSheet | null;
  readonly besides: PackedBesides;
  readonly standard: string;
  readonly settings: string | null;
}

export type PackedQuestion =
  | { readonly kind: "totals"; readonly about: PackedAbout }
  | { readonly kind: "findings"; readonly about: PackedAbout }
  | { readonly kind: "page"; readonly page: PageKind; readonly about: PackedAbout }
  | { readonly kind: "compare"; readonly older: PackedSheet | Uint8Array; readonly about: PackedAbout };

export type YardRequest = WorkerRequest<PackedQuestion>;

export type YardAnswer = WorkerAnswer<TotalsView | SheetContent | PrintedPage | ComparisonView>;

/** A yard desk in a worker of its own, made when first asked: its code is no part of the pane's first load. */
export function createWorkerYardDesk(makeWorker: () => Worker): YardDesk {
  const { ask } = workerAsker<PackedQuestion, unknown>(makeWorker);
  return {
    totals: (question) => ask({ kind: "totals", about: packed(question) }) as Promise<TotalsView>,
    findings: (question) => ask({ kind: "findings", about: packed(question) }) as Promise<SheetContent>,
    page: (page, question) => ask({ kind: "page", page, about: packed(question) }) as Promise<PrintedPage>,
    compare: (question, older) =>
      ask({
        kind: "compare",
        older: older instanceof Uint8Array ? older : packSheet(older),
        about: packed(question),
      }) as Promise<ComparisonView>,
  };
}

function packed({ sheet, shop, besides = NO_BESIDES, standard, settings }: YardQuestion): PackedAbout {
  return {
    sheet: packSheet(sheet),
    shop: shop === null ? null : packSheet(shop),
    besides: packBesides(besides),
    standard,
    settings,
  };
}
