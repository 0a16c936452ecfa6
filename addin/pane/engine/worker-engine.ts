import type { SheetContent } from "../../workbook/workbook-port";
import { workerAsker } from "./ask-worker";
import type { AuditView, BarView } from "./audit-view";
import type { MarkView, MissingFact, ShopEdits, TicketView } from "./bench-view";
import type { ComparisonView } from "./comparison-view";
import type { Engine } from "./engine";
import type { ExplainedView } from "./explained-view";
import type { FollowView } from "./follow-view";
import type { JobView } from "./job-view";
import { type PackedCall, packedCheck, packedCompare, packedRecheck } from "./packed-call";
import type { PrintedPage } from "./printed-page";
import type { TotalsView } from "./totals-view";

/** An engine in a worker, so that a long check never freezes the page. It is made at the first question. */
export function createWorkerEngine(makeWorker: () => Worker): Engine {
  const { ask, stop } = workerAsker<PackedCall, unknown>(makeWorker);
  return {
    check: (question) => ask(packedCheck(question)) as Promise<AuditView>,
    recheck: (edited) => ask(packedRecheck(edited)) as Promise<AuditView>,
    bar: (...given) => ask({ call: "bar", given }) as Promise<BarView | null>,
    explain: (...given) => ask({ call: "explain", given }) as Promise<ExplainedView>,
    ahead: (...given) => ask({ call: "ahead", given }) as Promise<string>,
    follows: (...given) => ask({ call: "follows", given }) as Promise<FollowView>,
    totals: (...given) => ask({ call: "totals", given }) as Promise<TotalsView>,
    findings: (...given) => ask({ call: "findings", given }) as Promise<SheetContent>,
    ownSheet: (...given) => ask({ call: "ownSheet", given }) as Promise<SheetContent>,
    marks: (...given) => ask({ call: "marks", given }) as Promise<readonly MarkView[]>,
    ticket: (...given) => ask({ call: "ticket", given }) as Promise<TicketView | null>,
    trialEdits: (...given) => ask({ call: "trialEdits", given }) as Promise<ShopEdits>,
    missingFacts: (...given) => ask({ call: "missingFacts", given }) as Promise<readonly MissingFact[]>,
    page: (...given) => ask({ call: "page", given }) as Promise<PrintedPage>,
    compare: (sheet, older) => ask(packedCompare(sheet, older)) as Promise<ComparisonView>,
    withFiles: (...given) => ask({ call: "withFiles", given }) as Promise<JobView>,
    basis: (...given) => ask({ call: "basis", given }) as Promise<string>,
    forget: () => ask({ call: "forget", given: [] }) as Promise<void>,
    stop,
  };
}
