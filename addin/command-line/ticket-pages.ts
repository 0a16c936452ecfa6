import type { AuditReport } from "../../core/audit/audit-report";
import { notToldWords } from "../../core/audit/not-told-words";
import type { Workshop } from "../../core/shop";
import type { Standard } from "../../core/standards";
import type { Ticket } from "../../core/tickets";
import { headOfSchedules } from "../print/head-of-schedules";
import type { PageHead } from "../print/print-page";
import { InputRefused } from "./input-refused";

/** The head of pages that are made of tickets, with what is not told. */
export function pageHead(
  made: readonly Pick<Ticket, "head">[],
  report: AuditReport,
  standard: Standard,
  leftOut: readonly string[],
): PageHead {
  return {
    ...headOfSchedules(
      made.map(({ head }) => head),
      standard.id,
    ),
    notTold: report.waivers.map(notToldWords),
    leftOut,
  };
}

/** The same head with what else is left out. */
export function withLeftOut(head: PageHead, more: readonly string[]): PageHead {
  return { ...head, leftOut: [...(head.leftOut ?? []), ...more] };
}

/** kg: the lifting limit given, else the Shop sheet's. */
export function bundleLimit(option: string | null, workshop: Workshop): number {
  const limit = option === null ? workshop.shop.limits.hoist : Number(option);
  if (limit === null)
    throw new InputRefused(
      "no lifting limit is known: give --bundle-limit KG, or write it on the Shop sheet as Hoist or crane kg",
    );
  if (!(limit > 0) || !Number.isFinite(limit))
    throw new InputRefused(`--bundle-limit ${option} is no mass: give kilograms, over 0`);
  return limit;
}
