import rule from "../../../../core/audit/rules/lap-below-any";
import { ruleCases } from "../rule-cases";

// from memory: EN 1992-1-1 8.7.3, 15d and 200 mm; IS 456 26.2.5.1 the same, gyanibabaofcivilengineering.blogspot.com;
// 12 in: what-when-how.com, Simplified design of reinforced concrete buildings, page 260
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "00", A: 6000, length: 6000, remark: "Übergreifung 0,75" }] },
    { rows: [{ size: "H16", shape: "00", A: 6000, length: 6000, remark: "lap 50" }] },
    { rows: [{ size: "H12", shape: "00", A: 6000, length: 6000, remark: "lap 200" }] },
    { rows: [{ size: "H12", shape: "00", A: 6000, length: 6000, remark: "lap 40d" }] },
    { rows: [{ size: "H12", shape: "00", A: 6000, length: 6000, remark: "lap 100 welded" }] },
    { rows: [{ size: "H12", shape: "00", A: 6000, length: 6000, remark: "top" }] },
    {
      standard: "ACI318:2019",
      rows: [{ size: "#5", shape: "00", A: 240, length: 240, remark: "lap 24 in" }],
    },
  ],
  speaks: [
    {
      rows: [
        { size: "H12", shape: "00", A: 6000, length: 6000, remark: "lap 150" },
        { size: "H20", shape: "00", A: 6000, length: 6000, remark: "recouvrement 250" },
        { size: "H20", shape: "00", A: 6000, length: 6000, remark: "lap 12d" },
      ],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message: "a lap of 150 mm is below 200 mm, the least of any lap: ask the designer",
        },
        {
          cell: "N3",
          outcome: "unsure",
          message: "a lap of 250 mm is below 300 mm, the least of any lap: ask the designer",
        },
        {
          cell: "N4",
          outcome: "unsure",
          message: "a lap of 240 mm is below 300 mm, the least of any lap: ask the designer",
        },
      ],
    },
    {
      standard: "IS2502:1963",
      rows: [{ size: "T12", shape: "00", A: 6000, length: 6000, remark: "lap 150" }],
      says: [
        { cell: "N2", message: "a lap of 150 mm is below 200 mm, the least of any lap: ask the designer" },
      ],
    },
    {
      standard: "ACI318:2019",
      rows: [{ size: "#5", shape: "00", A: 240, length: 240, remark: 'lap 10"' }],
      says: [{ cell: "N2", message: `a lap of 10" is below 1'-0", the least of any lap: ask the designer` }],
    },
  ],
});
