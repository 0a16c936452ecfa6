/** Text in A1 of every Totals sheet that we write: by it we know our own again. */
export const TOTALS_MARK = "Tonnes by pour and size";
