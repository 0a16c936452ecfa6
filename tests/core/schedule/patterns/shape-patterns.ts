import { each, firstBar, form, guesses, type Pattern, plainRow } from "./pattern";

const shaped = (cells: readonly (string | number)[]) =>
  form(cells.map((shape, index) => plainRow({ mark: `${index + 1}`, shape })));

/** Shape codes, legs in the shape cell, varying dimensions. */
export const SHAPE_PATTERNS: readonly Pattern[] = [
  {
    number: 33,
    name: "a shape code with more around it",
    seen: '"11 " · L11 · SC 21 · 99* · code 99 see dwg',
    reads: "the code's digits; where a letter or words stand beside them it is said",
    trust: "guess shown",
    cases: [
      {
        sheet: shaped(["11 ", "L11", "SC 21", "99*", "code 99 see dwg"]),
        pick: (r) => [each("shape")(r), guesses(r)],
        right: [
          ["11", "11", "21", "99", "99"],
          [
            ["shape", "shape-digits", false],
            ["shape", "shape-digits", false],
            ["shape", "shape-digits", false],
          ],
        ],
      },
    ],
  },
  {
    number: 34,
    name: "a shape code without its leading zero",
    seen: "1 · 0",
    reads: "01 and 00",
    trust: "read",
    cases: [
      { sheet: shaped([1, 0, "1", "00", 21]), pick: each("shape"), right: ["01", "00", "01", "00", "21"] },
    ],
  },
  {
    number: 35,
    name: "the shape as a picture",
    seen: "an empty shape cell beside dimensions",
    reads: "dimensions are taken; the shape is unknown, and said so",
    trust: "read",
    cases: [
      {
        sheet: form([plainRow({ shape: null })]),
        pick: (r) => [firstBar(r)?.shape, firstBar(r)?.dims, guesses(r)],
        right: [null, [1000, 400, 500], [["shape", "unread", false]]],
      },
    ],
  },
  {
    number: 36,
    name: "dimensions in the shape cell",
    seen: "300+1200+300 · 1200/300 · L 1200 x 300",
    reads: "the legs in order; the turns are not written, so right angles are proposed and asked",
    trust: "asks first",
    cases: [
      {
        sheet: form(
          ["300+1200+300", "1200/300", "L 1200 x 300"].map((shape) =>
            plainRow({ shape, A: null, B: null, C: null }),
          ),
        ),
        pick: (r) => [each("legs")(r), each("shape")(r), guesses(r)],
        right: [
          [
            [300, 1200, 300],
            [1200, 300],
            [1200, 300],
          ],
          [null, null, null],
          [
            ["shape", "shape-from-legs", true],
            ["shape", "shape-from-legs", true],
            ["shape", "shape-from-legs", true],
          ],
        ],
      },
      {
        sheet: form([plainRow({ shape: "300+1200+300", A: null, B: null, C: null })]),
        options: { confirmed: ["H2"] },
        pick: each("shape"),
        right: ["300 +90 1200 +90 300"],
      },
    ],
  },
  {
    number: 40,
    name: "a varying dimension",
    seen: "var · varies · 1200-1800 · 1200 TO 1800 step 50",
    reads: "a set of (1800 - 1200) / 50 + 1 = 13 lengths, which has to be the count; not one dimension",
    trust: "read",
    cases: [
      {
        sheet: form([
          plainRow({ A: "1200 TO 1800 step 50", each: 13, total: 13 }),
          plainRow({ A: "1200-1800", mark: "2" }),
          plainRow({ A: "varies", mark: "3" }),
          plainRow({ A: "var", mark: "4" }),
        ]),
        pick: (r) => [each("varying")(r), each("dims")(r)],
        right: [
          [
            { field: "A", from: 1200, to: 1800, step: 50, lengths: 13 },
            { field: "A", from: 1200, to: 1800, step: null, lengths: null },
            { field: "A", from: null, to: null, step: null, lengths: null },
            { field: "A", from: null, to: null, step: null, lengths: null },
          ],
          Array.from({ length: 4 }, () => [null, 400, 500]),
        ],
      },
      {
        sheet: form([plainRow({ A: "1200-1800 step 50", each: 12, total: 12 })]),
        pick: (r) => firstBar(r)?.problems?.map(({ reason }) => reason),
        right: [
          "A varies from 1200 to 1800 mm in steps of 50, 13 lengths for 12 bars: one row a length says it all",
        ],
      },
    ],
  },
];
