import type { TableColumns } from "../columns/table-columns";
import { readHeading } from "./read-heading";

/** How many members the member's own cell names, "M1 (SL: 10)", in a table that counts the bars of each and has no column for it. */
export function membersNamed(member: string, { members, each }: TableColumns): number | null {
  return members >= 0 || each < 0 ? null : readHeading(member).members;
}
