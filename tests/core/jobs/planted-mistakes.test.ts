import { describe, expect, it } from "vitest";
import { barsOf, jobOf, type PlantedSchedule } from "./small-job";

const walls = barsOf("W1", "P1");
const slabs = barsOf("SL1", "P2");
const beams = barsOf("B1", "P2", 2);
const piers = barsOf("PR1", "P1");

const WALL: PlantedSchedule = {
  file: "SQ-101.xlsx",
  number: "SQ-101",
  revision: "A",
  date: "2026-03-02",
  bars: [
    walls("01", "H16", 40, 3000),
    walls("02", "H12", 60, 2500),
    walls("03", "H12", 24, 1800),
    walls("04", "H20", 12, 6000),
  ],
};
const SLAB: PlantedSchedule = {
  file: "SQ-102.xlsx",
  number: "SQ-102",
  revision: "A",
  bars: [slabs("01", "H10", 80, 5000), slabs("02", "H10", 80, 4000), slabs("03", "H16", 30, 2200)],
};
const BEAM: PlantedSchedule = {
  file: "SQ-103.xlsx",
  number: "SQ-103",
  revision: "A",
  bars: [beams("01", "H25", 8, 7000), beams("02", "H20", 8, 7000), beams("03", "H10", 60, 1500)],
};
const PIER: PlantedSchedule = {
  file: "SQ-104.xlsx",
  number: "SQ-104",
  revision: "A",
  bars: [piers("01", "H32", 16, 5000), piers("02", "H12", 50, 2000), piers("03", "H12", 20, 1200)],
};
const CLEAN = [WALL, SLAB, BEAM, PIER];
const without = (one: PlantedSchedule): PlantedSchedule[] => CLEAN.filter((each) => each !== one);

const WITH_MASS = [
  ...["Member", "Bar mark", "Type and size", "No. of mbrs", "No. in each", "Total no.", "Length mm"],
  ...["Shape code", "A mm", "B mm", "C mm", "Pour", "Mass kg"],
];

interface Planted {
  readonly mistake: string;
  readonly files: readonly PlantedSchedule[];
  /** code of the finding that tells it */
  readonly told: string;
  /** words of its message */
  readonly says?: RegExp;
}

/** Mistakes of whole jobs, listed as a checker of other people's folders would, before any rule was written. */
const PLANTED: readonly Planted[] = [
  {
    mistake: "an older revision lies beside the newer one",
    files: [...CLEAN, { ...WALL, file: "old/SQ-101 rev 0.xlsx", revision: "0" }],
    told: "JOB101",
    says: /SQ-101 revision 0 is not counted/,
  },
  {
    mistake: "the same schedule lies there twice under two names",
    files: [...CLEAN, { ...SLAB, file: "Copy of SQ-102.xlsx" }],
    told: "JOB102",
  },
  {
    mistake: "two lists with other bars carry one number and revision",
    files: [...CLEAN, { ...PIER, file: "SQ-103 (2).xlsx", number: "SQ-103" }],
    told: "JOB103",
  },
  {
    mistake: "a mark stands in two schedules with another size",
    files: [
      ...CLEAN,
      { ...WALL, file: "SQ-105.xlsx", number: "SQ-105", bars: [walls("01", "H20", 40, 3000)] },
    ],
    told: "JOB104",
    says: /size H16 and H20/,
  },
  {
    mistake: "a mark stands in two schedules with another length",
    files: [
      ...CLEAN,
      { ...WALL, file: "SQ-105.xlsx", number: "SQ-105", bars: [walls("02", "H12", 60, 2900)] },
    ],
    told: "JOB104",
  },
  {
    mistake: "starters are listed with the wall and with the slab",
    files: [
      ...CLEAN,
      { ...SLAB, file: "SQ-105.xlsx", number: "SQ-105", bars: [walls("01", "H16", 40, 3000)] },
    ],
    told: "JOB105",
  },
  {
    mistake: "pours are written P1, P 1 and Pour 1",
    files: [
      ...without(PIER),
      {
        ...PIER,
        bars: [barsOf("PR1", "P 1")("01", "H32", 16, 5000), barsOf("PR1", "Pour 1")("02", "H12", 50, 2000)],
      },
    ],
    told: "JOB106",
    says: /"P1", "P 1", "Pour 1"/,
  },
  { mistake: "a schedule is missing from the numbers", files: without(BEAM), told: "JOB107", says: /SQ-103/ },
  {
    mistake: "sheet 2 of 3 is missing",
    files: [...without(WALL), { ...WALL, part: "1 of 3" }, { ...WALL, file: "SQ-101c.xlsx", part: "3 of 3" }],
    told: "JOB107",
    says: /sheet 2 of 3/,
  },
  {
    mistake: "one file goes by another edition",
    files: [...without(PIER), { ...PIER, standard: "BS8666:2020" }],
    told: "JOB108",
  },
  {
    mistake: "one file is in metres",
    files: [
      ...without(PIER),
      {
        ...PIER,
        head: [
          "Member",
          "Bar mark",
          "Type and size",
          "No. of mbrs",
          "No. in each",
          "Total no.",
          "Length m",
          "Shape code",
          "A m",
          "B m",
          "C m",
          "Pour",
        ],
        bars: [
          ["PR1", "01", "H32", 1, 16, 16, 5, "00", 5, null, null, "P1"],
          ["PR1", "02", "H12", 1, 50, 50, 2, "00", 2, null, null, "P1"],
          ["PR1", "03", "H12", 1, 20, 20, 1.2, "00", 1.2, null, null, "P1"],
        ],
      },
    ],
    told: "JOB109",
  },
  {
    mistake: "one file name lies in two folders",
    files: [
      ...without(PIER),
      { ...PIER, file: "north/list.xlsx", number: null },
      {
        ...PIER,
        file: "south/list.xlsx",
        number: null,
        bars: [piers("11", "H32", 4, 4100), piers("12", "H12", 9, 900)],
      },
    ],
    told: "JOB110",
  },
  {
    mistake: "one revision is a letter, the other a number",
    files: [
      ...CLEAN,
      {
        ...WALL,
        file: "SQ-101 issue 2.xlsx",
        revision: "2",
        bars: [walls("01", "H16", 44, 3000), ...WALL.bars.slice(1)],
      },
    ],
    told: "JOB111",
  },
  {
    mistake: "the file's name says revision C, its title block A",
    files: [...without(WALL), { ...WALL, file: "SQ-101_RevC.xlsx" }],
    told: "JOB112",
  },
  {
    mistake: "a title block was copied from another schedule",
    files: [
      ...CLEAN,
      { ...PIER, file: "SQ-106.xlsx", number: "SQ-102", bars: [barsOf("C9", "P1")("21", "H16", 7, 2700)] },
    ],
    told: "JOB103",
  },
  {
    mistake: "a schedule of another job lies in the folder",
    files: [
      ...CLEAN,
      {
        ...PIER,
        file: "KD-7.xlsx",
        number: "KD-7",
        job: "Kelp Dock",
        bars: [barsOf("K1", "P9")("01", "H16", 5, 1500)],
      },
    ],
    told: "JOB113",
  },
  {
    mistake: "a member is built twice in one schedule and four times in another",
    files: [
      ...CLEAN,
      {
        ...BEAM,
        file: "SQ-105.xlsx",
        number: "SQ-105",
        bars: [barsOf("B1", "P2", 4)("07", "H12", 40, 1500)],
      },
    ],
    told: "JOB114",
  },
  {
    mistake: "a schedule is preliminary while the others are for construction",
    files: [...without(PIER), { ...PIER, status: "Preliminary" }],
    told: "JOB115",
  },
  {
    mistake: "a withdrawn file is still in the folder",
    files: [
      ...CLEAN,
      { ...PIER, file: "SQ-105 SUPERSEDED.xlsx", number: "SQ-105", bars: [piers("41", "H16", 3, 900)] },
    ],
    told: "JOB115",
  },
  {
    mistake: "the newer revision is dated before the older one",
    files: [...CLEAN, { ...WALL, file: "SQ-101 rev B.xlsx", revision: "B", date: "2026-01-05" }],
    told: "JOB116",
  },
  {
    mistake: "a revision leaves out a mark of the one before",
    files: [...CLEAN, { ...WALL, file: "SQ-101 rev B.xlsx", revision: "B", bars: WALL.bars.slice(0, 3) }],
    told: "JOB117",
    says: /no longer has 04/,
  },
  {
    mistake: "a schedule has nothing that can be weighed",
    files: [
      ...without(PIER),
      { ...PIER, bars: [["PR1", "01", "H32", null, null, null, null, "00", null, null, null, "P1"]] },
    ],
    told: "JOB118",
  },
  {
    mistake: "the same list lies there under two numbers",
    files: [...CLEAN, { ...BEAM, file: "SQ-105.xlsx", number: "SQ-105" }],
    told: "JOB102",
  },
  {
    mistake: "a sum adds up two revisions",
    files: [
      ...CLEAN,
      {
        ...SLAB,
        file: "SQ-102 B.xlsx",
        revision: "B",
        head: [...WITH_MASS],
        bars: [
          ...SLAB.bars.map((bar) => [...bar, null]),
          // twice the list: H10 720 m at 0.616 and H16 66 m at 1.579 kg/m
          [
            "TOTAL",
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            2 * (720 * 0.616 + 66 * 1.579),
          ],
        ],
      },
    ],
    told: "JOB119",
  },
];

describe("mistakes of a whole job", () => {
  it("a job without one is silent, and all of it counts", () => {
    const { codes, tonnage } = jobOf(CLEAN);
    expect(codes).toEqual([]);
    // kg/m of the UK three-decimal table: H10 0.616, H12 0.888, H16 1.579, H20 2.466, H25 3.854, H32 6.313
    const p1 =
      40 * 3 * 1.579 +
      (60 * 2.5 + 24 * 1.8) * 0.888 +
      12 * 6 * 2.466 +
      16 * 5 * 6.313 +
      (50 * 2 + 20 * 1.2) * 0.888;
    const p2 = (80 * 5 + 80 * 4) * 0.616 + 30 * 2.2 * 1.579 + 8 * 7 * (3.854 + 2.466) + 60 * 1.5 * 0.616;
    const kilograms = Object.fromEntries(
      tonnage.tonnage.pours.map(({ pour, total }) => [pour, total * 1000]),
    );
    expect(kilograms.P1).toBeCloseTo(p1, 3);
    expect(kilograms.P2).toBeCloseTo(p2, 3);
  });

  it("a job's name is read apart from what else stands on its line, and two names are told once", () => {
    const line = (letter: string): string =>
      `Salt Quay, schedule ${letter}, BS 8666:2005, revision ${letter}`;
    const [one, two] = CLEAN as [PlantedSchedule, PlantedSchedule];
    expect(
      jobOf([
        { ...one, job: line("A") },
        { ...two, job: line("B") },
      ]).codes,
    ).toEqual([]);
    const other = jobOf([one, { ...two, job: "Kelp Dock" }]);
    expect(other.codes).toEqual(["JOB113"]);
    expect(other.messages[0]).toContain("others here say Salt Quay");
  });

  // Hand sum: 5 bars of 1.5 m at 1.579 kg/m (UK three-decimal table).
  it("what another job's schedule holds stands beside the total, which is told with it and without it", () => {
    const { files } = PLANTED.find(
      ({ mistake }) => mistake === "a schedule of another job lies in the folder",
    )!;
    const { tonnage } = jobOf(files);
    const alone = jobOf(CLEAN).tonnage;
    expect(tonnage.ofAnotherJob?.schedules).toEqual([{ book: "KD-7.xlsx", sheet: "Schedule" }]);
    expect(tonnage.ofAnotherJob?.tonnes).toBeCloseTo((5 * 1.5 * 1.579) / 1000, 9);
    expect(tonnage.ofAnotherJob?.without).toBe(alone.tonnage.total);
    expect(tonnage.tonnage.total).toBeCloseTo(alone.tonnage.total + (5 * 1.5 * 1.579) / 1000, 9);
    expect(alone.ofAnotherJob).toBeNull();
  });

  it.each(PLANTED.map((one) => [one.mistake, one] as const))("%s", (_, { files, told, says }) => {
    const { codes, messages } = jobOf(files);
    expect(codes).toContain(told);
    if (says !== undefined) expect(messages.join("\n")).toMatch(says);
  });

  it("counts the newest revision alone, and a schedule that stands there twice once", () => {
    const clean = jobOf(CLEAN).tonnage.tonnage.total;
    const older = jobOf([...CLEAN, { ...WALL, file: "old/SQ-101 rev 0.xlsx", revision: "0" }]);
    expect(older.tonnage.tonnage.total).toBe(clean);
    expect(older.tonnage.superseded).toBe(4);
    const copied = jobOf([...CLEAN, { ...SLAB, file: "Copy of SQ-102.xlsx" }]);
    expect(copied.tonnage.tonnage.total).toBe(clean);
    // a later list of few marks replaces those alone: 44 bars for 40 of mark 01
    const short = jobOf([
      ...CLEAN,
      { ...WALL, file: "SQ-101 B.xlsx", revision: "B", bars: [walls("01", "H16", 44, 3000)] },
    ]);
    expect(short.tonnage.tonnage.total - clean).toBeCloseTo((4 * 3 * 1.579) / 1000, 6);
  });
});
