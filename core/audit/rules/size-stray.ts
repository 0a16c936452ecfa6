import type { BarFacts } from "../../bar/bar-facts";
import type { SheetFacts } from "../../bar/sheet-facts";
import { massPerMetreOf, sizeElsewhere } from "../../schedule/cells/size-elsewhere";
import { ROUND_STEEL } from "../../schedule/evidence/evidence.data";
import { resolveStandard } from "../../standards/index";
import type { Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import { STRAY_SIZE } from "../practice.data";
import { isOutOf, isOutOfAll, rangeNamed } from "../rolled-range";
import { ROLLED_RANGES } from "../rolled-ranges.data";
import { defineRule } from "../rule";
import { isFabricName, swappedSize } from "../size-slips";
import { sizedLines } from "../sized-sums";

const bar = (mark: string, size: string, total: number, mass: number) => ({
  ...{ mark, size, shape: "00", A: 2000, length: 2000, members: 1, each: total, total, mass },
});
/** kg by hand: number x 2 m x 0.395, 0.617, 0.888, 1.579 */
const LIST = [
  ...[bar("1", "8", 10, 7.9), bar("2", "10", 10, 12.34), bar("3", "12", 10, 17.76)],
  ...[bar("4", "16", 10, 31.58), bar("5", "12", 20, 35.52), bar("6", "16", 20, 63.16)],
];

export default defineRule({
  code: "SIZE107",
  name: "size-stray",
  severity: "doubtful",
  docs: {
    summary:
      "A size that hardly any other row has is rolled nowhere, or the row's own mass or the summary by size says another.",
    why: "A slip in the size passes where the standard in force is not the sheet's own. The other rows, the mass and the summary show it all the same. Where a size is none of the standard it is told with that, so no small table can show it alone.",
    failing: [],
    passing: [{ rows: [...LIST, bar("7", "20", 10, 49.32)] }],
  },
  messages: {
    nowhere: "size {size} is rolled nowhere that is known, and no other row has it",
    outOfDocument: "size {size} is none that {document} holds, which the list names, and no other row has it",
    outOfAll:
      "size {size} is rolled in no country that is known to roll the other sizes of the list, and no other row has it",
    ofMass: "size {size} stands in no other row, and the mass of this one is that of {other}",
    notSummed: "size {size} is in no sum of the summary by size, which has every other size of the list",
  },
  checkSheet(sheet, context, report) {
    const strays = strayBars(sheet);
    if (strays.length === 0) return;
    const summed = summedSizes(sheet, context.standard);
    const range = rangeNamed(sheet);
    const meant = meantBy(sheet);
    for (const facts of strays) {
      const typed = facts.row.sizeTyped ?? "";
      if (isFabricName(typed) || swappedSize(typed, context.standard) !== null) continue;
      const size = typed.trim();
      const isToldAlready =
        !context.isStandardAssumed && sheet.habits.standardMeant === null && facts.bar === null;
      if (!isToldAlready && isRolledNowhere(facts)) {
        report({ messageId: "nowhere", outcome: "unsure", row: facts, at: "size", values: { size } });
        continue;
      }
      const isOut = range !== null && isOutOf(range, facts, sheet);
      const ofMass = facts.bar === null || isOut ? sizeOfMass(facts, sheet) : null;
      const other = ofMass ?? sizeOfMeant(facts, meant);
      if (other !== null) {
        report({ messageId: "ofMass", outcome: "unsure", row: facts, at: "size", values: { size, other } });
        continue;
      }
      if (isOut) {
        const values = { size, document: range.document };
        const { cite } = ROLLED_RANGES;
        report({ messageId: "outOfDocument", outcome: "unsure", row: facts, at: "size", values, cite });
        continue;
      }
      if (summed !== null && facts.diameter !== null && !summed.has(facts.diameter)) {
        report({ messageId: "notSummed", outcome: "unsure", row: facts, at: "size", values: { size } });
        continue;
      }
      if (range === null && isOutOfAll(facts, sheet)) {
        const { cite } = ROLLED_RANGES;
        report({ messageId: "outOfAll", outcome: "unsure", row: facts, at: "size", values: { size }, cite });
      }
    }
  },
});

/** Bars of sizes that no other bar has, in a list long enough to tell. */
function strayBars({ bars }: SheetFacts): readonly BarFacts[] {
  if (bars.length < STRAY_SIZE.value.leastRows) return [];
  /** null where more bars than one have the size */
  const only = new Map<string | number, BarFacts | null>();
  for (let place = 0; place < bars.length; place += 1) {
    const facts = bars[place] as BarFacts;
    const { row } = facts;
    const { sizeTyped } = row;
    if (sizeTyped === null || row.superseded === true) continue;
    const key = row.size?.diameter ?? plainNumber(sizeTyped.trim());
    const before = only.get(key);
    if (before !== null) only.set(key, before === undefined ? facts : null);
  }
  return [...only.values()].filter((facts) => facts !== null);
}

/** A number that is written as it would be shown is the same size as one that was read. */
function plainNumber(typed: string): string | number {
  const number = Number(typed);
  return String(number) === typed ? number : typed;
}

/** The standard that is not in force and that the sizes of all rows but one are of; null where there is none. */
function meantBy({ habits, bars }: SheetFacts): Standard | null {
  if (habits.standardMeant === null) return null;
  const meant = resolveStandard(habits.standardMeant.id);
  if (isRefusal(meant)) return null;
  const out = bars.filter(({ row }) => row.superseded !== true && !isSizeOf(row.sizeTyped, meant));
  return out.length === 1 ? meant : null;
}

/** The size of that standard whose mass a metre the row has, where its own size is none of it. */
function sizeOfMeant(facts: BarFacts, meant: Standard | null): string | null {
  const [own, found] = [massPerMetreOf(facts.row.size), perMetreTyped(facts)];
  if (meant === null || own === null || found === null || isSizeOf(facts.row.sizeTyped, meant)) return null;
  const isNear = (perMetre: number): boolean => Math.abs(found / perMetre - 1) <= STRAY_SIZE.value.near;
  return isNear(own) ? null : (meant.bars.find(({ massPerMetre }) => isNear(massPerMetre))?.size ?? null);
}

function isSizeOf(typed: string | null, standard: Standard): boolean {
  const size = typed === null ? null : standard.readSize(typed);
  return size !== null && !isRefusal(size) && size.bar !== null;
}

function isRolledNowhere({ bar, row, diameter, count }: BarFacts): boolean {
  if (bar !== null || row.sizeTyped === null) return false;
  const elsewhere = sizeElsewhere(row.sizeTyped);
  // a bare 15 in a list of millimetres, or one behind the sign of a diameter, is no bar of 16 mm that a country calls 15
  if (elsewhere !== null && !(elsewhere.diameter !== diameter && MILLIMETRES.test(row.sizeTyped.trim())))
    return false;
  // what is no number at all is no size that could be judged
  if (!/^\D{0,3}\d{1,2}\D{0,3}$/.test(row.sizeTyped.trim())) return false;
  // a sum that was read as a bar has a number in its place
  if (row.length === null || count === null || (diameter ?? 0) > STRAY_SIZE.value.thickest) return false;
  return diameter === null || !ROUND_STEEL.value.diameters.includes(diameter);
}

const MILLIMETRES = /^(?:[ØøΦφ⌀∅]\s?)?\d+$/;
const MM_PER_METRE = 1000;

/** The size of the sheet, or of round steel, whose mass a metre the row has, where it is clearly not its own. */
function sizeOfMass(facts: BarFacts, { bars }: SheetFacts): string | null {
  const own = massPerMetreOf(facts.row.size);
  const found = perMetreTyped(facts);
  const { off, near } = STRAY_SIZE.value;
  if (own === null || found === null) return null;
  const isOwn = (perMetre: number | null): boolean => perMetre !== null && Math.abs(perMetre / own - 1) < off;
  // mass per foot stands in the column of masses per metre where the mass itself is that of the size
  if (isOwn(found) || isOwn(perMetreOfMass(facts))) return null;
  const isNear = (perMetre: number | null): boolean =>
    perMetre !== null && Math.abs(found / perMetre - 1) <= near;
  const another = bars.find((one) => one !== facts && isNear(massPerMetreOf(one.row.size)));
  if (another !== undefined) return another.sizeName;
  const rolled = ROUND_STEEL.value.diameters.find((diameter) =>
    isNear((Math.PI / 4) * (diameter / MM_PER_METRE) ** 2 * ROUND_STEEL.value.density),
  );
  return rolled === undefined ? null : String(rolled);
}

function perMetreTyped(facts: BarFacts): number | null {
  const { row } = facts;
  if (row.unitMass) return row.unitMass;
  if (row.pieceMass && row.length) return row.pieceMass / (row.length / MM_PER_METRE);
  return perMetreOfMass(facts);
}

function perMetreOfMass({ row, count }: BarFacts): number | null {
  const length = row.totalLength ?? (count === null || row.length === null ? null : count * row.length);
  if (row.mass === null || row.mass <= 0 || length === null || length <= 0) return null;
  return row.mass / (length / MM_PER_METRE);
}

/** Diameters of the sums by size, where they hold every size of the list that several rows have. */
function summedSizes(sheet: SheetFacts, standard: Standard): ReadonlySet<number> | null {
  const strays = new Set(strayBars(sheet));
  const common = new Set(sheet.bars.flatMap((facts) => (strays.has(facts) ? [] : (facts.diameter ?? []))));
  // the sums may stand on a sheet of their own
  const alone = sheet.book.sheets.filter((one) => one !== sheet && one.bars.length === 0);
  const lists = sheet.book.sheets.length - alone.length;
  for (const one of [sheet, ...(lists === 1 ? alone : [])]) {
    const lines = sizedLines(one, standard).filter(({ above }) => above === null);
    const sizesOf = ({ sums }: (typeof lines)[number]) => sums.map(({ diameter }) => diameter);
    // a line may leave the size of another member blank
    const all = new Set(lines.flatMap(sizesOf));
    for (const line of lines) {
      const sizes = new Set(sizesOf(line));
      if (sizes.size < STRAY_SIZE.value.leastSizes || sizes.has(Number.NaN)) continue;
      const isWhole = [...common].every((diameter) => sizes.has(diameter));
      const missing = [...strays].filter(({ diameter }) => diameter !== null && !sizes.has(diameter));
      if (isWhole && missing.length <= 1) return all;
    }
  }
  return null;
}
