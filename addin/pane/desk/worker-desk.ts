import type { AuditDesk } from "./audit-desk";
import type { AuditView, BarView } from "./audit-view";
import { type PackedSheet, packSheet } from "./packed-sheet";

export type DeskQuestion =
  | {
      readonly kind: "audit";
      readonly sheet: PackedSheet;
      readonly shop: PackedSheet | null;
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

export interface DeskRequest {
  readonly number: number;
  readonly question: DeskQuestion;
}

export type DeskAnswer =
  | { readonly number: number; readonly result: AuditView | BarView | null }
  | { readonly number: number; readonly problem: string };

/** A desk in a worker, so that a long audit never freezes the page. It is made at the first question. */
export function createWorkerDesk(makeWorker: () => Worker): AuditDesk {
  let worker: Worker | null = null;
  const waiting = new Map<number, { resolve(result: unknown): void; reject(problem: Error): void }>();
  let count = 0;
  const open = (): Worker => {
    const opened = makeWorker();
    opened.onmessage = ({ data }: MessageEvent<DeskAnswer>) => {
      const asker = waiting.get(data.number);
      waiting.delete(data.number);
      if ("problem" in data) asker?.reject(new Error(data.problem));
      else asker?.resolve(data.result);
    };
    opened.onerror = ({ message }) => {
      for (const asker of waiting.values()) asker.reject(new Error(message));
      waiting.clear();
    };
    return opened;
  };
  const ask = (question: DeskQuestion): Promise<unknown> =>
    new Promise((resolve, reject) => {
      count += 1;
      waiting.set(count, { resolve, reject });
      worker ??= open();
      worker.postMessage({ number: count, question } satisfies DeskRequest);
    });
  return {
    audit: ({ sheet, shop, standard, settings }) =>
      ask({
        kind: "audit",
        sheet: packSheet(sheet),
        shop: shop === null ? null : packSheet(shop),
        standard,
        settings,
      }) as Promise<AuditView>,
    recheck: ({ sheet, firstRow, lastRow }) =>
      ask({ kind: "recheck", sheet: packSheet(sheet), firstRow, lastRow }) as Promise<AuditView>,
    bar: (sheet, row) => ask({ kind: "bar", sheet, row }) as Promise<BarView | null>,
    forget: async () => {
      await ask({ kind: "forget" });
    },
  };
}
