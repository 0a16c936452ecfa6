import { type WorkerAnswer, type WorkerRequest, workerAsker } from "../ask-worker";
import type { AuditDesk } from "./audit-desk";
import type { AuditView, BarView } from "./audit-view";
import { type PackedBesides, type PackedSheet, packBesides, packSheet } from "./packed-sheet";

export type DeskQuestion =
  | {
      readonly kind: "audit";
      readonly sheet: PackedSheet;
      readonly shop: PackedSheet | null;
      readonly besides: PackedBesides;
      readonly standard: string;
      readonly settings: string | null;
    }
  | {
      readonly kind: "recheck";
      readonly sheet: PackedSheet;
      readonly firstRow: number;
      readonly lastRow: number;
    }
  | { readonly kind: "bar"; readonly sheet: string; readonly row: number }
  | { readonly kind: "forget" };

export type DeskRequest = WorkerRequest<DeskQuestion>;

export type DeskAnswer = WorkerAnswer<AuditView | BarView | null>;

/** A desk in a worker, so that a long audit never freezes the page. It is made at the first question. */
export function createWorkerDesk(makeWorker: () => Worker): AuditDesk {
  const { ask, stop } = workerAsker<DeskQuestion, unknown>(makeWorker);
  return {
    audit: ({ sheet, shop, besides, standard, settings }) =>
      ask({
        kind: "audit",
        sheet: packSheet(sheet),
        shop: shop === null ? null : packSheet(shop),
        besides: packBesides(besides),
        standard,
        settings,
      }) as Promise<AuditView>,
    recheck: ({ sheet, firstRow, lastRow }) =>
      ask({ kind: "recheck", sheet: packSheet(sheet), firstRow, lastRow }) as Promise<AuditView>,
    bar: (sheet, row) => ask({ kind: "bar", sheet, row }) as Promise<BarView | null>,
    forget: async () => {
      await ask({ kind: "forget" });
    },
    stop,
  };
}
