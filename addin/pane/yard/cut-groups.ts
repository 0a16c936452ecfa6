import { cutList, type Piece, planCutting, type Stock } from "../../../core/cutting";
import type { ScheduleReading, Sheet } from "../../../core/schedule";
import { type Shop, stockOfSize } from "../../../core/shop";
import type { Standard } from "../../../core/standards";
import { rowMasses } from "../../../core/totals";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import type { CutListGroup } from "../../print/cut-list-page";

/** ms for all sizes together */
const TIME = 2_000;
/** mm from which a rest goes back to the rack where the Shop sheet names no length: common practice */
const LEAST_REMNANT = 1000;

interface MarkedPiece extends Piece {
  readonly mark: string;
}

/** The cutting plan of every size of a schedule, and what is in no plan. */
export function cutGroups(
  sheet: Sheet,
  reading: ScheduleReading,
  standard: Standard,
  shop: Shop | null,
): { groups: CutListGroup[]; notes: string[] } {
  const { pieces, unknown } = piecesBySize(sheet, reading, standard);
  const notes = unknown === 0 ? [] : [`${unknown} rows without a cut length or a count are in no plan`];
  const cutter = shop?.cutters.length === 1 ? shop.cutters[0] : undefined;
  if ((shop?.cutters.length ?? 0) > 1)
    notes.push("the Shop sheet names several cutters: no end crop or kerf is taken off");
  const usual = standard.supply.stockLength?.value ?? null;
  const groups = [...pieces].flatMap(([size, ofSize]): CutListGroup[] => {
    const stock: Stock[] | null =
      stockOfSize(size, shop, standard) ??
      (usual === null ? null : [{ length: usual, count: null, remnant: false }]);
    if (stock === null) {
      notes.push(`${size}: ${standard.id} names no stock length, write one on the Shop sheet`);
      return [];
    }
    const question = {
      stock,
      endCrop: cutter?.endCrop ?? 0,
      kerf: cutter?.kerf ?? 0,
      timeLimit: TIME / pieces.size,
    };
    return planned(size, ofSize, question, shop, notes);
  });
  if (groups.length === 0) throw new Error(`nothing can be cut: ${notes.join("; ")}`);
  return { groups, notes };
}

/** A piece that no stock bar holds is named and left out; it is never split. */
function planned(
  size: string,
  pieces: readonly MarkedPiece[],
  question: Omit<Parameters<typeof planCutting>[0], "pieces">,
  shop: Shop | null,
  notes: string[],
): CutListGroup[] {
  if (pieces.length === 0) return [];
  const plan = planCutting({ ...question, pieces });
  if (!isRefusal(plan)) {
    return [{ size, plan, rows: cutList(plan, pieces, shop?.limits.leastRemnant ?? LEAST_REMNANT) }];
  }
  const { length } = plan.values;
  const refused = pieces.filter((piece) => piece.length === length);
  const marks = refused.map(({ mark }) => mark).join(", ");
  notes.push(`${size}${marks === "" ? "" : `, mark ${marks}`}: ${refusalText(plan)}`);
  if (refused.length === 0) return [];
  const rest = pieces.filter((piece) => piece.length !== length);
  return planned(size, rest, question, shop, notes);
}

function piecesBySize(sheet: Sheet, reading: ScheduleReading, standard: Standard) {
  const pieces = new Map<string, MarkedPiece[]>();
  let unknown = 0;
  rowMasses(sheet, reading, standard).forEach((row, index) => {
    const bar = reading.bars[index]!;
    if (bar.struckThrough || bar.superseded === true) return;
    // what the schedule says is cut, where it says a length
    const length = bar.length ?? row?.cutLength ?? null;
    if (row === null || length === null || row.count === null) {
      unknown += 1;
      return;
    }
    if (row.count === 0) return;
    const known = pieces.get(row.size) ?? [];
    known.push({ mark: bar.mark ?? "no mark", length, count: row.count });
    pieces.set(row.size, known);
  });
  return { pieces, unknown };
}
