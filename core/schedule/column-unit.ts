/** What the numbers of a column are in. */
export type ColumnUnit = "mm" | "cm" | "m" | "in" | "ft" | "kg" | "t" | "lb";
