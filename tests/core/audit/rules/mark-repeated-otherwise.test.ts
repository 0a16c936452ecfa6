import rule from "../../../../core/audit/rules/mark-repeated-otherwise";
import { ruleCases } from "../rule-cases";

// a mark names one bar: common practice
ruleCases(rule, {
  silent: [
    {
      rows: [
        { mark: "07", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { mark: "7", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
      ],
    },
    {
      // marks that start again in every member
      rows: ["B1", "B2"].flatMap((member) =>
        [1, 2, 3].map((n) => ({
          member,
          mark: `0${n}`,
          size: member === "B1" ? "H16" : "H20",
          shape: "00",
          A: 1000 * n,
          length: 1000 * n,
        })),
      ),
    },
  ],
  speaks: [
    {
      rows: [
        { mark: "07", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { mark: "08", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { mark: "7", size: "H16", shape: "11", A: 500, B: 405, length: 875 },
      ],
      says: [{ cell: "B4", message: "mark 7 stands in row 2 too, with another B" }],
    },
    {
      rows: [
        { mark: "07", size: "H16", shape: "00", A: 500, length: 500 },
        { mark: "07", size: "H20", shape: "00", A: 500, length: 500 },
      ],
      says: [{ cell: "B3", message: "mark 07 stands in row 2 too, with another size" }],
    },
  ],
});
