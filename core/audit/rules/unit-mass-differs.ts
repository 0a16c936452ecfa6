import type { BarFacts } from "../../bar/bar-facts";
import { IDENTITIES } from "../../bar/identities.data";
import { massPerMetreOf } from "../../schedule/cells/size-elsewhere";
import type { Bar } from "../../standards/port";
import { KG_PER_UNIT, MM_PER_UNIT } from "../../units/unit-table";
import { defineRule } from "../rule";

const bar = (size: string, unitMass: number) => ({
  ...{ size, shape: "00", A: 1000, length: 1000, members: 1, each: 10, total: 10, unitMass },
});

export default defineRule({
  code: "MASS103",
  name: "unit-mass-differs",
  severity: "off-standard",
  docs: {
    summary:
      "The mass per metre of a row is not that of its bar size elsewhere on the sheet, or is another size's.",
    why: "A mass per metre from the wrong line of a table makes the row's tonnage wrong, and the order with it.",
    failing: [
      { rows: [bar("H16", 1.58), bar("H16", 1.58), bar("H16", 1.58), bar("H12", 0.888), bar("H16", 0.888)] },
    ],
    passing: [{ rows: [bar("H16", 1.58), bar("H16", 1.579), bar("H12", 0.888)] }],
  },
  messages: {
    differs: "mass per metre {typed} is not the {usual} of the other {size} rows",
    table: "mass per metre {typed} is not the {usual} of {size}, while most rows have those of their sizes",
    other: "mass per metre {typed} of size {size} is that of {meant}",
  },
  checkSheet(sheet, context, report) {
    if (!sheet.has("unitMass")) return;
    const usual = usualBySize(sheet.bars);
    const factor = unitOfColumn(sheet.bars);
    for (const facts of sheet.bars) {
      const typed = facts.row.unitMass ?? null;
      const { diameter } = facts;
      if (typed === null || diameter === null) continue;
      const group = usual.get(diameter);
      const table = group === undefined ? farFromTable(facts, typed, factor) : undefined;
      if (table !== undefined) {
        const values = { typed, usual: table, size: facts.sizeName };
        report({ messageId: "table", outcome: "unsure", row: facts, at: "unitMass", values });
      }
      const near = (value: number): boolean =>
        Math.abs(typed - value) <= IDENTITIES.value.unitMassWithin * value + ROUNDING;
      if (group !== undefined && near(group)) {
        const meant = meantSize(facts, near, context.standard.bars);
        if (meant !== null && isFirst(sheet.bars, facts)) {
          const values = { typed, size: facts.sizeName, meant };
          report({ messageId: "other", row: facts, at: "unitMass", values });
        }
        continue;
      }
      if (group === undefined) continue;
      const values = { typed, usual: group, size: facts.sizeName };
      report({ messageId: "differs", row: facts, at: "unitMass", values });
    }
  },
});

/** The other size whose mass per metre the rows of this size hold. */
function meantSize({ bar }: BarFacts, near: (value: number) => boolean, bars: readonly Bar[]): string | null {
  if (bar === null || near(bar.massPerMetre)) return null;
  const meant = bars.find(({ massPerMetre }) => near(massPerMetre));
  return meant === undefined || meant.size === bar.size ? null : meant.size;
}

/** kg/m: what a mass printed to three places leaves */
const ROUNDING = 0.0006;

/** The middle mass per metre of each diameter with three rows or more. */
function usualBySize(bars: readonly BarFacts[]): ReadonlyMap<number, number> {
  const bySize = new Map<number, number[]>();
  for (const { diameter, row } of bars) {
    if (diameter === null || !((row.unitMass ?? 0) > 0)) continue;
    const group = bySize.get(diameter);
    if (group === undefined) bySize.set(diameter, [row.unitMass ?? 0]);
    else group.push(row.unitMass ?? 0);
  }
  const usual = new Map<number, number>();
  for (const [size, masses] of bySize) {
    masses.sort((one, other) => one - other);
    const middle = masses[masses.length >> 1];
    if (masses.length >= IDENTITIES.value.sizeRows && middle !== undefined) usual.set(size, middle);
  }
  return usual;
}

/** kg/m, and lb/ft of one kg/m */
const UNITS = [1, MM_PER_UNIT.ft / 1000 / KG_PER_UNIT.lb] as const;

/** The unit that most rows of the column hold the masses of their sizes in; null where no unit fits most. */
function unitOfColumn(bars: readonly BarFacts[]): number | null {
  const tested = bars.filter(({ row }) => row.unitMass != null && massPerMetreOf(row.size) !== null);
  const { share, rows } = IDENTITIES.value;
  const fits = UNITS.map((factor) => tested.filter((facts) => !isFar(facts, factor)).length);
  const most = Math.max(...fits);
  return most >= rows && most >= share * tested.length ? (UNITS[fits.indexOf(most)] ?? null) : null;
}

/** Further from the table than any other table is. */
function isFar({ row }: BarFacts, factor: number): boolean {
  const table = massPerMetreOf(row.size) ?? Number.NaN;
  return !(Math.abs(Math.log((row.unitMass ?? 0) / (table * factor))) < IDENTITIES.value.fromTable);
}

/** What the table gives for a size of few rows, where the row is far from it; undefined where it is near. */
function farFromTable(facts: BarFacts, typed: number, factor: number | null): number | undefined {
  const table = massPerMetreOf(facts.row.size);
  if (factor === null || table === null || !(typed > 0) || !isFar(facts, factor)) return undefined;
  return Math.round(table * factor * 1000) / 1000;
}

/** A size that is wrong in every row is told once. */
function isFirst(bars: readonly BarFacts[], facts: BarFacts): boolean {
  return bars.find(({ bar }) => bar?.size === facts.bar?.size) === facts;
}
