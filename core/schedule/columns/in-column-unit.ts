import { KG_PER_UNIT, MM_PER_UNIT } from "../../units/unit-table";
import type { ColumnUnit } from "../bar-row";

/** mm or kg in one of a column's unit. */
export const IN_COLUMN_UNIT: Readonly<Record<ColumnUnit, number>> = { ...MM_PER_UNIT, ...KG_PER_UNIT };
