import rule from "../../../../core/audit/rules/mass-with-waste";
import { ruleCases } from "../rule-cases";

// 1.579 kg/m for 16 mm; every row 3 % over
ruleCases(rule, {
  silent: [
    {
      rows: [1, 2, 3, 4, 5, 6].map((m) => ({
        size: "H16",
        shape: "00",
        A: 1000 * m,
        length: 1000 * m,
        mass: 3.158 * m,
      })),
    },
  ],
  speaks: [
    {
      rows: [1, 2, 3, 4, 5, 6].map((m) => ({
        size: "H16",
        shape: "00",
        A: 1000 * m,
        length: 1000 * m,
        mass: 3.2527 * m,
      })),
      says: [
        {
          cell: null,
          message: "the masses are 1.03 times count x length x unit mass throughout: is waste worked in?",
        },
      ],
    },
  ],
});
