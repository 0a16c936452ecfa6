import * as z from "zod";
import { DIMENSION_LETTERS } from "../standards/dimension-letters";

const KINDS = [
  "member",
  "mark",
  "size",
  "grade",
  "members",
  "each",
  "total",
  "length",
  "shape",
  ...DIMENSION_LETTERS,
  "R",
  "mass",
  "unitMass",
  "pieceMass",
  "totalLength",
  "spacing",
  "former",
  "coating",
  "pour",
  "drawing",
  "revision",
  "released",
  "remark",
  "ignored",
] as const;

const columnCorrection = z.object({
  /** the header's own text, or the column's letter on the sheet */
  column: z.string().min(1).max(200),
  /** it is the letter of a column of the sheet, although a heading may read the same */
  isLetter: z.boolean().optional(),
  kind: z.enum(KINDS).optional(),
  unit: z.enum(["mm", "cm", "m", "in", "ft", "kg", "t", "lb"]).optional(),
});

/** What a user may decide about the reading of a sheet, as it is stored. */
export const readOptions = z.object({
  columns: z.array(columnCorrection).max(500).optional(),
  /** the grade of bars that name none */
  grade: z.string().min(1).max(60).optional(),
  /** guesses that the user confirmed, each by its code or by a cell such as "F12" */
  confirmed: z.array(z.string().max(40)).max(100_000).optional(),
});

/** A user's correction of what a column is, kept in the workbook. */
export type ColumnCorrection = z.infer<typeof columnCorrection>;

/** What a user has decided about the reading of a sheet. */
export type ReadOptions = z.infer<typeof readOptions>;

/**
 * The options as far as they can be read, and what is wrong with the rest. They come out of a
 * workbook, so anything may stand there.
 */
export function parseReadOptions(stored: unknown): { options: ReadOptions; wrong: string | null } {
  if (stored === undefined || stored === null) return { options: {}, wrong: null };
  const parsed = readOptions.safeParse(stored);
  if (parsed.success) return { options: parsed.data, wrong: null };
  const first = parsed.error.issues[0];
  const place = first?.path.join(".") ?? "";
  return {
    options: {},
    wrong: `the stored column corrections could not be read (${place}: ${first?.message ?? ""})`,
  };
}

const sheetShape = z.object({
  name: z.string(),
  top: z.number().int().min(0),
  left: z.number().int().min(0),
  rowCount: z.number().int().min(0).max(1_048_576),
  columnCount: z.number().int().min(0).max(16_384),
  cell: z.custom<unknown>((value) => typeof value === "function", "cell is no function"),
  merges: z
    .array(
      z.object({
        top: z.number().int(),
        left: z.number().int(),
        bottom: z.number().int(),
        right: z.number().int(),
      }),
    )
    .optional(),
});

/** Throws a `z.ZodError` where a surface hands over what is no sheet: a fault of ours, not of the user's. */
export function assertSheet(sheet: unknown): void {
  sheetShape.parse(sheet);
}
