import type { Cited } from "../standards/citation";

/** Grades of reinforcing steel by their names, in capitals without spaces and hyphens, as lists of many countries write them. */
export const KNOWN_GRADES: Cited<readonly string[]> = {
  value: [
    ...["B400A", "B400B", "B400C", "B450A", "B450B", "B450C", "B500A", "B500B", "B500C", "B550A", "B550B"],
    ...["B400S", "B500S", "B400SD", "B500SD", "B500T", "B420B", "B420C", "B500SP", "B500W", "RB400", "RB500"],
    ...["B500NA", "B500NB", "B500NC", "K500AB", "K500BT", "K500CT", "A400NR", "A500NR", "A500ER", "A700HW"],
    ...[
      "BST420S",
      "BST500S",
      "BST500M",
      "BST500A",
      "BST500B",
      "BST550",
      "S220",
      "S400",
      "S500",
      "S420",
      "S500S",
    ],
    ...[
      "FE215",
      "FE250",
      "FE400",
      "FE415",
      "FE500",
      "FE550",
      "FE600",
      "FE500D",
      "FE550D",
      "FEB22K",
      "FEB44K",
    ],
    ...["SR235", "SR295", "SD295", "SD345", "SD390", "SD490", "SD300", "SD400", "SD500", "SD600", "SD700"],
    ...["SD280W", "SD420W", "SD490W", "SD550W", "SD460", "ADN420", "ADN500", "AL220", "FEE400", "FEE500"],
    ...["G40", "G60", "G75", "GR40", "GR60", "GR75", "B550C", "B500K", "S235", "S500B", "S500C"],
    ...["SD400W", "SD500W", "SD400S", "SD500S", "SR24", "SD30", "SD40", "SD50", "SD280", "SD420"],
    ...["A240", "A300", "A400", "A500", "A600", "A240C", "A300C", "A400C", "A500C", "A600C", "A500CP"],
    ...[
      "CA25",
      "CA50",
      "CA60",
      "PC52",
      "PC60",
      "PC90",
      "OB37",
      "BST37",
      "CB240T",
      "CB300T",
      "CB300V",
      "CB400V",
    ],
    ...["CB500V", "CB600V", "HPB235", "HPB300", "HRB335", "HRB400", "HRB500", "HRB600", "HRB400E", "HRB500E"],
    ...["R250N", "D250N", "D500N", "D500L", "D500E", "500E", "500N", "500L", "300E", "300N", "250N"],
    // CSA G30.18
    ...["400W", "500W", "400R", "500R"],
    ...[
      "BJTP280",
      "BJTS280",
      "BJTS420A",
      "BJTS420B",
      "BJTS520",
      "U24",
      "U39",
      "U40",
      "AI",
      "AII",
      "AIII",
      "AIV",
    ],
  ],
  cite: { document: "grades named in schedules and steel standards by country", provenance: "memory" },
};

/** Rows of known grades from which one that nobody knows is a slip, and how many rows are looked at for them. */
export const STRAY_GRADE: Cited<{
  readonly rows: number;
  readonly looked: number;
  readonly longest: number;
}> = {
  value: { rows: 5, looked: 200, longest: 60 },
  cite: { document: "lists whose grades are all known but one", provenance: "derived" },
};
