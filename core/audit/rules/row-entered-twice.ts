import type { BarFacts } from "../../bar/bar-facts";
import { TWICE } from "../../bar/identities.data";
import type { SheetFacts } from "../../bar/sheet-facts";
import { textColumns } from "../../bar/text-columns";
import { defineRule } from "../rule";
import { firstDifference } from "../same-bar";

const bar = (mark: string, length: number, total: number) => ({
  ...{ mark, size: "H16", shape: "00", A: length, length, members: 1, each: total, total },
});
const LIST = Array.from({ length: 12 }, (_, index) => bar(String(index + 1), 1000 + 50 * index, 10 + index));

export default defineRule({
  code: "MARK105",
  name: "row-entered-twice",
  severity: "doubtful",
  docs: {
    summary: "A row of the list repeats another with the same mark, bar and number.",
    why: "A row that was copied or read out twice is cut, bought and paid twice.",
    failing: [{ rows: [...LIST, bar("4", 1150, 13)] }],
    passing: [{ rows: [...LIST, bar("13", 1150, 13)] }],
  },
  messages: {
    alike: "the row is word for word that of row {first}: is it entered twice?",
    twice: "mark {mark} stands in row {first} too, the same bar and as many: is it entered twice?",
  },
  checkSheet(sheet, _context, report) {
    const twice = markedTwice(sheet);
    for (const { first, again } of twice) {
      const values = { mark: again.row.mark ?? "", first: rowNumber(first) };
      report({ messageId: "twice", outcome: "unsure", row: again, at: "mark", values });
    }
    const told = new Set(twice.map(({ again }) => again));
    const alike = sheet.answers.whole(rowsAlike, rowText);
    if (alike.length > TWICE.value.mostRepeated * sheet.answers.length) return;
    for (const [first, again] of alike) {
      const [one, other] = [sheet.answers.bar(first), sheet.answers.bar(again)];
      if (other.row.struckThrough || one.row.struckThrough || told.has(other)) continue;
      const values = { first: rowNumber(one) };
      report({ messageId: "alike", outcome: "unsure", row: other, at: "member", values });
    }
  },
});

function rowNumber({ row, sheet }: BarFacts): string {
  return String(sheet.sheet.top + row.row + 1);
}

/** Rows with the mark, the bar and the number of another, where few marks come again. */
function markedTwice(sheet: SheetFacts): readonly { readonly first: BarFacts; readonly again: BarFacts }[] {
  const { mostRepeated, leastRows } = TWICE.value;
  const marked = sheet.answers.count(hasMark);
  if (marked < leastRows) return [];
  const twice: { first: BarFacts; again: BarFacts }[] = [];
  let repeated = 0;
  for (const bars of sheet.repeatedMarks) {
    const [first, ...others] = bars;
    if (first === undefined) continue;
    repeated += others.length;
    for (const again of others) if (isSameRow(first, again)) twice.push({ first, again });
  }
  // where many marks come again they are meant to: a mark of each member, a mark of each pour
  return repeated > Math.max(1, mostRepeated * marked) ? [] : twice;
}

/** What stands in a row under the columns of its table; empty where no words tell it from others. */
function rowText({ row, sheet, count }: BarFacts): string {
  if (count === null || row.length === null) return "";
  const { columns, bySize = [], unknownHeaders = [] } = row.table;
  const all = [...columns.values(), ...bySize, ...unknownHeaders].map(({ column }) => column);
  const cells = all.map((column) => sheet.sheet.cell(row.row, column) ?? null);
  const isNamed = textColumns(row.table).some((column) => {
    const cell = column === columns.get("shape")?.column ? null : sheet.sheet.cell(row.row, column);
    const isMember = column === columns.get("member")?.column;
    return typeof cell === "string" && (isMember || WORDS.test(cell));
  });
  return isNamed ? JSON.stringify([row.member, cells]) : "";
}

const WORDS = /\p{L}{3}|[\p{Script=Han}\p{Script=Hangul}\p{Script=Kana}]{2}/u;

/** Places of rows alike, each with the first of them; only lists long enough to tell a habit. */
function rowsAlike(bars: readonly BarFacts[]): readonly (readonly [number, number])[] {
  if (bars.length < TWICE.value.leastRows) return [];
  const first = new Map<string, number>();
  const alike: (readonly [number, number])[] = [];
  bars.forEach((facts, place) => {
    const text = rowText(facts);
    const before = text === "" ? undefined : first.get(text);
    if (before !== undefined) alike.push([before, place]);
    else if (text !== "") first.set(text, place);
  });
  return alike;
}

function hasMark({ markKey }: BarFacts): boolean {
  return markKey !== null;
}

function isSameRow(first: BarFacts, again: BarFacts): boolean {
  const [one, other] = [first.row, again.row];
  if (one.table !== other.table || one.revision !== other.revision || one.pour !== other.pour) return false;
  if (one.struckThrough || other.struckThrough || one.superseded === true || other.superseded === true)
    return false;
  return first.count === again.count && first.count !== null && firstDifference(one, other) === null;
}
