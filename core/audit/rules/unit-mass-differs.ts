import type { BarFacts } from "../../bar/bar-facts";
import { IDENTITIES } from "../../bar/identities.data";
import { massPerMetreOf } from "../../schedule/cells/size-elsewhere";
import type { Bar } from "../../standards/port";
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
    other: "mass per metre {typed} of size {size} is that of {meant}",
  },
  checkSheet(sheet, context, report) {
    if (!sheet.has("unitMass")) return;
    const usual = usualBySize(sheet.bars);
    for (const facts of sheet.bars) {
      const typed = facts.row.unitMass ?? null;
      const own = sizeOf(facts);
      if (typed === null || own === null) continue;
      const group = usual.get(own.size);
      const near = (value: number): boolean =>
        Math.abs(typed - value) <= IDENTITIES.value.unitMassWithin * value + ROUNDING;
      if (group !== undefined && near(group)) {
        const meant = meantSize(own, near, context.standard.bars);
        if (meant !== null && isFirst(sheet.bars, facts)) {
          const values = { typed, size: facts.sizeName, meant };
          report({ messageId: "other", row: facts, at: "unitMass", values });
        }
        continue;
      }
      if (group === undefined) {
        // too few rows for a habit: the mass that all rows of another size hold, far from the size's own
        const other = isFar(typed, own.massPerMetre) ? usualOf(sheet.bars, usual, near) : null;
        if (other !== null) {
          report({
            messageId: "other",
            row: facts,
            at: "unitMass",
            values: { typed, size: facts.sizeName, meant: other },
          });
        }
        continue;
      }
      const values = { typed, usual: group, size: facts.sizeName };
      report({ messageId: "differs", row: facts, at: "unitMass", values });
    }
  },
});

/** The other size whose mass per metre the rows of this size hold. */
function meantSize(own: OwnSize, near: (value: number) => boolean, bars: readonly Bar[]): string | null {
  if (near(own.massPerMetre)) return null;
  const meant = bars.find(({ massPerMetre }) => near(massPerMetre));
  return meant === undefined || meant.size === own.size ? null : meant.size;
}

interface OwnSize {
  readonly size: string;
  /** kg/m */
  readonly massPerMetre: number;
}

/** The bar's size, also one that the standard in force does not hold. */
function sizeOf({ bar, row: { size } }: BarFacts): OwnSize | null {
  if (bar !== null) return bar;
  const massPerMetre = massPerMetreOf(size);
  return size === null || massPerMetre === null ? null : { size: String(size.diameter), massPerMetre };
}

/** Whatever table a list goes by, its mass of a size is no further from another's. */
const TABLES_DIFFER = 0.08;

function isFar(typed: number, own: number): boolean {
  return Math.abs(typed / own - 1) > TABLES_DIFFER;
}

/** The size whose rows hold the mass, as the list names it. */
function usualOf(
  bars: readonly BarFacts[],
  usual: ReadonlyMap<string, number>,
  near: (value: number) => boolean,
): string | null {
  for (const [size, mass] of usual) {
    if (near(mass)) return bars.find((one) => sizeOf(one)?.size === size)?.sizeName ?? size;
  }
  return null;
}

/** kg/m: what a mass printed to three places leaves */
const ROUNDING = 0.0006;

/** The middle mass per metre of each size with three rows or more. */
function usualBySize(bars: readonly BarFacts[]): ReadonlyMap<string, number> {
  const bySize = new Map<string, number[]>();
  for (const facts of bars) {
    const own = sizeOf(facts);
    const typed = facts.row.unitMass ?? 0;
    if (own === null || !(typed > 0)) continue;
    const group = bySize.get(own.size);
    if (group === undefined) bySize.set(own.size, [typed]);
    else group.push(typed);
  }
  const usual = new Map<string, number>();
  for (const [size, masses] of bySize) {
    masses.sort((one, other) => one - other);
    const middle = masses[masses.length >> 1];
    if (masses.length >= IDENTITIES.value.sizeRows && middle !== undefined) usual.set(size, middle);
  }
  return usual;
}

/** A size that is wrong in every row is told once. */
function isFirst(bars: readonly BarFacts[], facts: BarFacts): boolean {
  const size = sizeOf(facts)?.size;
  return bars.find((one) => sizeOf(one)?.size === size) === facts;
}
