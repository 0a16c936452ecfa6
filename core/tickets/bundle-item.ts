import type { BundleItem } from "../totals/bundles";
import { holdsOfTicket } from "./holds-of-ticket";
import type { RowToSend } from "./row-to-send";

/** What a ticket's bars are in a bundle; null where count, length or mass is not known. */
export function bundleItem(ticket: RowToSend): BundleItem | null {
  const { pour, member, mark, size, shape, count, cut, reach = null, massEach, head, remark } = ticket;
  const heats = ticket.heats.map(({ heat }) => heat ?? "not written down");
  if (count === null || count === 0 || cut === null || massEach === null) return null;
  const { waived, held, asked } = holdsOfTicket(ticket);
  const schedule = head.schedule ?? head.drawing;
  const { revision } = head;
  // objects spread into one another take ten times as long
  return {
    pour,
    member,
    mark,
    size,
    shape,
    count,
    length: cut.length,
    reach: reach ?? cut.length,
    massEach,
    schedule,
    revision,
    waived,
    held,
    asked,
    heats,
    remark,
  };
}
