import rule from "../../../../core/audit/rules/row-entered-twice";
import { ruleCases } from "../rule-cases";

const bar = (mark: string, length: number, total: number) => ({
  ...{ mark, size: "H16", shape: "00", A: length, length, members: 1, each: total, total },
});
const LIST = Array.from({ length: 12 }, (_, index) => bar(String(index + 1), 1000 + 50 * index, 10 + index));

ruleCases(rule, {
  silent: [
    { rows: LIST },
    // another number of the same bar is no copy of the row
    { rows: [...LIST, bar("4", 1150, 20)] },
    // marks that come again throughout are meant to
    { rows: [...LIST, ...LIST.slice(0, 6)] },
  ],
  speaks: [
    {
      rows: [...LIST, bar("4", 1150, 13)],
      says: [
        {
          cell: "B14",
          message: "mark 4 stands in row 5 too, the same bar and as many: is it entered twice?",
          outcome: "unsure",
        },
      ],
    },
  ],
});
