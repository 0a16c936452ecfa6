import type { BarFacts } from "./bar-facts";
import type { SheetFacts } from "./sheet-facts";

/** A total that is another multiple of the number in each than those of all other rows of its member. */
export interface OffMember {
  readonly facts: BarFacts;
  readonly usual: number;
  readonly others: number;
}

/** rows of one member that agree before another one is told, and members that have several rows */
const LEAST_ALIKE = 2;
const LEAST_MEMBERS = 2;

/** Where no column says how many members there are, the rows of one member agree on it: those that do not, one a sheet. */
export function offMember(sheet: SheetFacts): OffMember | null {
  const places = sheet.answers.whole(oddOnes, timesText);
  const [odd, another] = places;
  // where more than one differs they count otherwise, and none is odd
  if (odd === undefined || another !== undefined) return null;
  const facts = sheet.answers.bar(odd.place);
  const { each, total } = facts.row;
  if (odd.others < LEAST_ALIKE || !isSlip(total ?? 0, (each ?? 0) * odd.usual)) return null;
  return { facts, usual: odd.usual, others: odd.others };
}

/** A nought too many or lost, or the same digits in another order: bars of half the members are no slip. */
function isSlip(typed: number, expected: number): boolean {
  const [long, short] = [Math.max(typed, expected), Math.min(typed, expected)];
  const digits = (value: number): string => [...String(value)].sort().join("");
  return long === short * TEN || digits(typed) === digits(expected);
}

const TEN = 10;

function timesText(facts: BarFacts): string {
  const times = timesOf(facts);
  return times === null ? "" : `${facts.row.member} ${times}`;
}

/** How often the number in each goes into the total; null where either is open or the number of members is written. */
function timesOf({ row }: BarFacts): number | null {
  const { member, members, each, total, table } = row;
  if (members !== null || member === null || table.columns.has("members")) return null;
  return each === null || total === null || !(each > 0) || !(total > 0) ? null : total / each;
}

function oddOnes(bars: readonly BarFacts[]) {
  const members = new Map<string, { readonly place: number; readonly times: number }[]>();
  bars.forEach((facts, place) => {
    const times = timesOf(facts);
    if (times === null) return;
    const member = facts.row.member ?? "";
    const same = members.get(member);
    if (same === undefined) members.set(member, [{ place, times }]);
    else same.push({ place, times });
  });
  const several = [...members.values()].filter((rows) => rows.length > 1);
  if (several.length < LEAST_MEMBERS) return [];
  return several.flatMap((rows) => {
    const counts = new Map<number, number>();
    for (const { times } of rows) counts.set(times, (counts.get(times) ?? 0) + 1);
    if (counts.size === 1) return [];
    const [[usual, others] = [0, 0]] = [...counts].sort(([, a], [, b]) => b - a);
    return rows.filter(({ times }) => times !== usual).map(({ place }) => ({ place, usual, others }));
  });
}
