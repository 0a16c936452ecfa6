import { type PackedSheet, packSheet } from "../desk/packed-sheet";
import type { ComparisonView } from "./comparison-view";
import type { PrintedPage } from "./printed-page";
import type { TotalsView } from "./totals-view";
import type { PageKind, YardDesk, YardQuestion } from "./yard-desk";

interface PackedAbout {
  readonly sheet: PackedSheet;
  readonly shop: PackedSheet | null;
  readonly standard: string;
  readonly settings: string | null;
}

export type PackedQuestion =
  | { readonly kind: "totals"; readonly about: PackedAbout }
  | { readonly kind: "page"; readonly page: PageKind; readonly about: PackedAbout }
  | { readonly kind: "compare"; readonly older: PackedSheet | Uint8Array; readonly about: PackedAbout };

export interface YardRequest {
  readonly number: number;
  readonly question: PackedQuestion;
}

export type YardAnswer =
  | { readonly number: number; readonly result: TotalsView | PrintedPage | ComparisonView }
  | { readonly number: number; readonly problem: string };

/** A yard desk in a worker of its own, made when first asked: its code is no part of the pane's first load. */
export function createWorkerYardDesk(makeWorker: () => Worker): YardDesk {
  const waiting = new Map<number, { resolve(result: unknown): void; reject(problem: Error): void }>();
  let count = 0;
  let worker: Worker | null = null;
  const open = (): Worker => {
    const opened = makeWorker();
    opened.onmessage = ({ data }: MessageEvent<YardAnswer>) => {
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
  const ask = (question: PackedQuestion): Promise<unknown> =>
    new Promise((resolve, reject) => {
      worker ??= open();
      count += 1;
      waiting.set(count, { resolve, reject });
      worker.postMessage({ number: count, question } satisfies YardRequest);
    });
  return {
    totals: (question) => ask({ kind: "totals", about: packed(question) }) as Promise<TotalsView>,
    page: (page, question) => ask({ kind: "page", page, about: packed(question) }) as Promise<PrintedPage>,
    compare: (question, older) =>
      ask({
        kind: "compare",
        older: older instanceof Uint8Array ? older : packSheet(older),
        about: packed(question),
      }) as Promise<ComparisonView>,
  };
}

function packed({ sheet, shop, standard, settings }: YardQuestion): PackedAbout {
  return { sheet: packSheet(sheet), shop: shop === null ? null : packSheet(shop), standard, settings };
}
