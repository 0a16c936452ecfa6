import rule from "../../../../core/audit/rules/amount-blank";
import { ruleCases } from "../rule-cases";

const bar = (
  length: number,
  each: number | null,
  more: Readonly<Record<string, number | string | null>> = {},
) => ({
  ...{ size: "H16", shape: "00", A: length, length, members: 1, each, total: each, ...more },
});

ruleCases(rule, {
  silent: [
    { rows: [bar(2000, 10), bar(3000, 12)] },
    // members and bars in each give it
    { rows: [bar(2000, 10), bar(3000, 12, { total: null })] },
    // taken out, and said to be
    { rows: [bar(2000, 10), bar(3000, 12), bar(4000, 0, { remark: "deleted, rev B" })] },
    // of one member half of the rows leave it blank: the total says as much
    {
      rows: [1, 2, 3, 4, 5, 6, 7, 8].map((at) =>
        bar(1000 * at, at < 6 ? at : null, { total: at, ...(at < 6 ? { members: 2, total: 2 * at } : {}) }),
      ),
    },
    // no row has any: the column was not read, and that is another finding
    { rows: [bar(2000, null), bar(3000, null)] },
  ],
  speaks: [
    {
      rows: [bar(2000, 10), bar(3000, 12), bar(4000, 0), bar(0, 5, { A: null })],
      says: [
        {
          cell: "F4",
          severity: "doubtful",
          message: "the number of bars is 0: the row adds nothing to any total",
        },
        { cell: "G5", severity: "doubtful", message: "the length is 0: the row adds nothing to any total" },
      ],
    },
    {
      // one member of 48: the other rows of one member write it
      rows: [...[1, 2, 3, 4, 5].map((at) => bar(1000 * at, 10)), bar(6000, null, { total: 48 })],
      says: [
        {
          cell: "E7",
          message: "the number in each is blank; 48 would follow from the total and the members",
          severity: "doubtful",
          after: { E7: 48 },
        },
      ],
    },
    {
      // 2 x 14: sums below that go by the column lack the row
      rows: [
        ...[1, 2, 3, 4].map((at) => bar(1000 * at, 10, { members: 2, each: 5 })),
        bar(5000, null, { members: 2, each: 14 }),
      ],
      says: [
        {
          cell: "F6",
          message: "the total number is blank; 28 would follow from members times bars in each",
          severity: "doubtful",
          after: { F6: 28 },
        },
      ],
    },
    {
      rows: [bar(2000, 10), bar(3000, 12), bar(4000, null)],
      says: [{ cell: "F4", message: "the number of bars is blank: the row stands in no total" }],
    },
    {
      // 48 m of 4 m bars
      rows: [
        bar(2000, 10, { totalLength: 20 }),
        bar(3000, 12, { totalLength: 36 }),
        bar(4000, null, { totalLength: 48 }),
      ],
      says: [
        {
          cell: "F4",
          message:
            "the number of bars is blank: the row stands in no total; 12 would follow from the total length",
          after: { F4: 12 },
        },
      ],
    },
    {
      // 75.84 kg of 4 m of H16 at 1.58 kg/m
      rows: [bar(2000, 10, { mass: 31.6 }), bar(3000, 12, { mass: 56.88 }), bar(4000, null, { mass: 75.84 })],
      says: [
        {
          cell: "F4",
          message: "the number of bars is blank: the row stands in no total; 12 would follow from the mass",
          after: { F4: 12 },
        },
      ],
    },
    {
      // 3 members and 24 in all
      rows: [
        ...Array.from({ length: 5 }, (_, at) => bar(2000 + 100 * at, 10)),
        bar(4000, null, { members: 3, total: 24 }),
      ],
      says: [
        {
          cell: "E7",
          severity: "doubtful",
          message: "the number in each is blank; 8 would follow from the total and the members",
          after: { E7: 8 },
        },
      ],
    },
    {
      rows: [bar(2000, 10), bar(3000, 12), bar(4000, 14, { size: null })],
      says: [{ cell: "C4", message: "the size is blank: the row stands in no total" }],
    },
  ],
});
