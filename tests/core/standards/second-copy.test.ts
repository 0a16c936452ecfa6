import { describe, expect, it } from "vitest";
import { type HeldTable, heldTables } from "../../../core/standards/held-tables";
import { coverage } from "../../../core/standards/index";
import { REGISTRY } from "../../../core/standards/registry";
import { nameTypedTwice } from "../../../core/standards/typed-twice";
import { TYPED_TWICE } from "../../../core/standards/typed-twice.data";
import { heldStandard } from "../../_support/held-standard";

/**
 * Every table held as published, typed in a second time from the pages named in its citation: a line a
 * row, a blank between columns. Areas of the Indian table and r, M, P of the others are checked by
 * arithmetic elsewhere as well.
 */
const SECOND_COPY: Record<string, string> = {
  // midlandrapid.co.uk/bs-8666-2005-standard-shapes; midlandsteelsupplies.ie/reinforcement-bars.html
  "BS8666:2005, bars": `
    6 6 28.3 0.222
    8 8 50.3 0.395
    10 10 78.5 0.616
    12 12 113.1 0.888
    16 16 201.1 1.579
    20 20 314.2 2.466
    25 25 490.9 3.854
    32 32 804.2 6.313
    40 40 1256.6 9.864
    50 50 1963.5 15.413`,
  // tunleyrod.co.uk/barsizes.html: Table 2, d and M
  "BS8666:2005, formers, Table 2": "6 24\n8 32\n10 40\n12 48\n16 64\n20 140\n25 175\n32 224\n40 280\n50 350",
  // the same: d and r
  "BS8666:2005, r of the length formulas":
    "6 12\n8 16\n10 20\n12 24\n16 32\n20 70\n25 87\n32 112\n40 140\n50 175",
  // the same: d, P general and for links bent below 150 degrees; straight of 5d and 10d in the column heads
  "BS8666:2005, end legs, Table 2": `
    main 6 110 5
    link 6 110 10
    main 8 115 5
    link 8 115 10
    main 10 120 5
    link 10 130 10
    main 12 125 5
    link 12 160 10
    main 16 130 5
    link 16 210 10
    main 20 190 5
    link 20 290 10
    main 25 240 5
    link 25 365 10
    main 32 305 5
    link 32 465 10
    main 40 380 5
    link 40 580 10
    main 50 475 5
    link 50 725 10`,
  // obconstruction.co.uk/reinforcement/shapecodes; rom.co.uk/products/Reinforcement.aspx; lceted.com bar bending
  // shape codes: the table of shapes; 99 has no formula
  "BS8666:2005, shape codes": `
    00 A
    01 A
    11 A+(B)-0.5r-d
    12 A+(B)-0.43R-1.2d
    13 A+0.57B+(C)-1.6d
    14 A+(C)-4d
    15 A+(C)
    21 A+B+(C)-r-2d
    22 A+B+C+(D)-1.5r-3d
    23 A+B+(C)-r-2d
    24 A+B+(C)
    25 A+B+(E)
    26 A+B+(C)
    27 A+B+(C)-0.5r-d
    28 A+B+(C)-0.5r-d
    29 A+B+(C)-r-2d
    31 A+B+C+(D)-1.5r-3d
    32 A+B+C+(D)-1.5r-3d
    33 2A+1.7B+2(C)-4d
    34 A+B+C+(E)-0.5r-d
    35 A+B+C+(E)-0.5r-d
    36 A+B+C+(D)-r-2d
    41 A+B+C+D+(E)-2r-4d
    44 A+B+C+D+(E)-2r-4d
    46 A+2B+C+(E)
    47 2A+B+2(C)+1.5r-3d 2A+B+max(21d,240)
    51 2(A+B+(C))-2.5r-5d 2A+2B+max(16d,160)
    56 A+B+C+(D)+2(E)-2.5r-5d
    63 2A+3B+2(C)-3r-6d 2A+3B+max(14d,150)
    64 A+B+C+2D+E+(F)-3r-6d
    67 A
    75 pi(A-d)+(B)
    77 Cpi(A-d) Csqrt((pi(A-d))^2+B^2)
    98 A+2B+C+(D)-2r-4d
    99`,
  // the same pages; the general note that r of Table 2 applies to all codes; P of 51, 56 and 63 is that of links
  "BS8666:2005, limits of shape codes": `
    11 A,(B)>=P
    12 A,(B)>=P
    12 A,(B)>=R+6d
    12 R>=r
    13 B>=2(r+d)
    13 A,(C)>=P
    13 A,(C)>=B/2+5d
    14 A,(C)>=P
    15 A,(C)>=P
    21 A,(C)>=P
    22 C>=2(r+d)
    22 A,(D)>=P
    22 (D)>=C/2+5d
    23 A,(C)>=P
    24 A,(C)>=P
    25 A,B>=P
    26 A,(C)>=P
    27 A,(C)>=P
    28 A,(C)>=P
    29 A,(C)>=P
    31 A,(D)>=P
    32 A,(D)>=P
    33 A>=12d+30
    33 B>=2(r+d)
    33 (C)>=P
    33 (C)>=B/2+5d
    34 A,(E)>=P
    35 A,(E)>=P
    36 A,(D)>=P
    41 A,(E)>=P
    44 A,(E)>=P
    46 A,(E)>=P
    47 (C)=(D)
    47 (C)<=A
    47 (C)>=P
    51 (C)=(D)
    51 (C)<=AorB
    51 (C)>=P(links)
    56 (E)=(F)
    56 (E)<=BorC
    56 (E)>=P(links)
    63 (C)=(D)
    63 (C)<=AorB
    63 (C)>=P(links)
    64 A,(F)>=P
    98 C,(D)>=P`,
  // fendersteel.co.uk/codesbs2005notes.html
  "BS8666:2005, straight between two bends, in diameters": "4",
  "BS8666:2005, bends from which a shape may be impractical": "5",
  // scribd 467122400 and kbrebar.co.uk/bs-4466 (preferred); rsj-steels.co.uk and expressreinforcements.co.uk (others);
  // 36, 48, 75 and 83 by clwyd-reinforcements.co.uk alone; 87 see its conflict
  "BS4466:1989, shape codes": `
    20 A
    32 A+h
    33 A+2h
    34 A+n
    35 A+2n
    36 A+C+(E)+0.57(B+D)-pid
    37 A+(B)-0.5r-d
    38 A+B+(C)-r-2d
    39 A+0.57B+(C)-1.57d
    41 A+B+(C)
    42 A+B+C+n
    43 A+2B+C+(E)
    45 A+B+(C)-0.5r-d
    48 A+B+C
    49 A+B+(C)
    51 A+(B)-0.5R-d
    52 A+B+C+(D)-1.5r-3d
    53 A+B+C+D+(E)-2r-4d
    54 A+B+(C)-r-2d
    55 A+B+C+D+(E)-2r-4d
    61 2(A+B)+12d
    62 A+(C)
    65 A
    75 A+B+C+2D+E+10d
    77 2A+B+20d
    78 2A+B+C+3d
    79 2A+3B+10d
    82 2A+3B+18d
    83 A+2B+C+D-2r-4d
    85 A+B+0.57C+(D)-0.5r-2.57d
    87 C/Bpi(A+d)+8d
    99`,
  // scribd 467122400: what is asked of grade 250, the least of any
  "BS4466:1989, limits of shape codes": "61 A,B>=10d\n61 A,B>=100",
  // the same: R greater than 200 mm
  "BS4466:1989, largest former for a curve": "400",
  "BS8666:2005, stock length": "12000",
  "BS8666:2005, largest former for a curve": "400",
  // concrete.org.uk fingertips-document id=1057
  "BS8666:2005, cold bending needs leave below, C": "-5",
  // tunleyrod.co.uk/barsizes.html: Table 6, metres
  "BS8666:2005, radius above which a bar is supplied straight":
    "6 2500\n8 2750\n10 3500\n12 4250\n16 7500\n20 14000\n25 30000\n32 43000\n40 58000",
  // studylib.net/doc/18310154; buildinghow.com: Table 8.1N a)
  "EC2:2004, formers, 8.3(2), Table 8.1N a)": "main/link 16 4\nmain/link 7",
  "EC2:2004, cold bending needs leave below, C": "-5",
  // de.scribd.com/document/536122161: Table 8.1DE
  "DIN-EC2:2013, formers": `
    main/link 20 4
    main/link 7
    bent-upc>100 10
    bent-upc>50 15
    bent-up 20`,
  "DIN-EC2:2013, cold bending needs leave below, C": "-5",
  // zimmerer-treff.com biege.htm
  "DIN-EC2:2013, re-bending":
    "barsover12mmarenotbentback;upto12mmonce,fromatmost90degrees,andthen80%ofthestrengthcounts",
  // SRIA TN4, studylib.net/doc/26177969: designations D500N, D500L, R250N
  "AS3600:2018, grades, AS/NZS 4671": "D500N N 500\nD500L L 500\nR250N R 250",
  // designmanual.gaa.com.au
  "AS3600:2018, formers": "galvanized 16 5\ngalvanized 8",
  // standards.govt.nz on steel bending; de.scribd.com/document/96480881: Table 3.1
  "NZS3109:1997, formers": `
    link 300plain/500plain 20 2
    link 300plain/500plain 24 3
    link 300E/500E 20 4
    link 300E/500E 24 6
    main 20 5
    main 40 6`,
  // scribd 137946991
  "NZS3109:1997, cold bending needs leave below, C": "5",
  // standards.govt.nz; scribd 137946991; scribd 312187678
  "NZS3109:1997, re-bending":
    "onlywhereitcannotbeavoided,planned,byastatedmethodwiththetoolforit;micro-alloyed500Eisnotbentagain;startersmeantforitare300E,16mmatmost,thebend3dormorefromtheconcreteface",
  // PCI Design Handbook 7th ed., Design Aid 15.4.1
  "ACI318:2019, bars": `
    #3 0.375 71 0.11 0.560 0.376
    #4 0.500 129 0.20 0.994 0.668
    #5 0.625 199 0.31 1.552 1.043
    #6 0.750 284 0.44 2.235 1.502
    #7 0.875 387 0.60 3.042 2.044
    #8 1.000 510 0.79 3.973 2.670
    #9 1.128 645 1.00 5.060 3.400
    #10 1.270 819 1.27 6.404 4.303
    #11 1.410 1006 1.56 7.907 5.313
    #14 1.693 1452 2.25 11.38 7.650
    #18 2.257 2581 4.00 20.24 13.60`,
  // the same page, note on ASTM A767
  "ACI318:2019, formers, bend diameters before galvanizing": "galvanized #7/#8 8",
  // scribd 655153874
  "ACI318:2019, formers, Table 25.3.1": "main #8 6\nmain #11 8\nmain #18 10",
  // muhaz.org, ACI 315-99 Table 1 (cont.): D of 1 1/2, 2, 2 1/2 in for #3 to #5 is 4d; 4 1/2, 5 1/4, 6 for #6 to #8 is 6d
  "ACI318:2019, formers, Table 25.3.2": "link #5 4\nlink #8 6",
  "ACI318:2019, end legs": "main #18 12",
  "ACI318:2019, hooks": "main 90 #18 12\nmain 180 #18 4 2.5",
  // seaintarchive.org mailarchive/2002c/msg01442; id.scribd.com/document/441003619
  "CSA-A23.1:2019, bars": `
    10M 11.3 100 0.785
    15M 16.0 200 1.570
    20M 19.5 300 2.355
    25M 25.2 500 3.925
    30M 29.9 700 5.495
    35M 35.7 1000 7.850`,
  // tehristeel.com; the page's 3.88 for 25 mm is its slip; the areas are pi d2/4 to 0.1 mm2
  "IS2502:1963, bars": `
    4 4 12.6 0.099
    5 5 19.6 0.154
    6 6 28.3 0.222
    8 8 50.3 0.395
    10 10 78.5 0.617
    12 12 113.1 0.888
    16 16 201.1 1.58
    20 20 314.2 2.47
    25 25 490.9 3.85
    28 28 615.8 4.83
    32 32 804.2 6.31
    36 36 1017.9 7.99
    40 40 1256.6 9.86`,
  // gbrmetals.com, shivatmt.com: Fe 500 bend 4d to 20 mm and 5d above; rebend 5d to 10 mm and 7d above
  "IS2502:1963, mandrels of tests of the bar, never for bending": `
    bend Fe500 20 4
    bend Fe500 5
    rebend Fe415/Fe500 10 5
    rebend Fe415/Fe500 7`,
  // most Indian teaching pages on bar bending schedules
  "INDIA-SITE, deductions": "45 1\n90 2\n135 3",
  // 135: wecivilengineers, sketchup3dconstruction and others; 180: civilsnapshot, 9d or 75 mm
  "INDIA-SITE, what a hook adds": "135 10 75\n180 9 75",
  // Site Fundi sheet, scribd 503953176
  "SANS282:2011, width for transport": "2200",
  "SANS282:2011, stock length": "13000",
  // rms-sa.co.za/product/cutting-bending: r is 18 24 30 36 48 60 75 96 120, 3d throughout, and the former twice that
  "SANS282:2011, formers, least radii of high yield bars": "6",
  "SANS282:2011, radius above which a bar is supplied straight":
    "8 2500\n10 3000\n12 3500\n16 5000\n20 7000\n25 17000\n32 43000",
  "SANS282:2011, tolerances":
    "cutlength 25 25\nbentdimension 1000 5 5\nbentdimension 2000 5 10\nbentdimension 5 25",
  // kamegai.on.coocan.jp/old/lib3/g3112.htm
  "JASS5:2018, bars": `
    D6 6.35 31.67 0.249
    D8 7.94 49.51 0.389
    D10 9.53 71.33 0.560
    D13 12.7 126.7 0.995
    D16 15.9 198.6 1.56
    D19 19.1 286.5 2.25
    D22 22.2 387.1 3.04
    D25 25.4 506.7 3.98
    D29 28.6 642.4 5.04
    D32 31.8 794.2 6.23
    D35 34.9 956.6 7.51
    D38 38.1 1140 8.95`,
  // sankoseiko.co.jp: up to 7 m +40, -0
  "JASS5:2018, tolerances, fabrication tolerances; delivered length by JIS G 3112": `
    deliveredlength 7000 40 0
    cutlength 20 20
    bentdimension 15 15
    bentdimension,D29andlarger 20 20
    linkdimension 5 5`,
  // sekokan2.work post-1424: inside diameters by grade and size
  "JASS5:2018, formers": `
    SD295/SD345/SR235/SR295 D16 3
    SD295/SD345/SR235/SR295 D41 4
    SD390 D41 5
    SD490 D25 5
    SD490 D41 6`,
  // kenchikushi.support 1-5-25081; sakuyukai.jp 2020/06/02
  "JASS5:2018, hooks": "180 4\n135 6",
  // tianhewen.com answer 11928; doczj.com 139143562; areas of 6 to 12, 36 to 50 mm are pi d2/4
  "GB50204:2015, bars": `
    6 6 28.27 0.222
    8 8 50.27 0.395
    10 10 78.54 0.617
    12 12 113.1 0.888
    14 14 153.9 1.21
    16 16 201.1 1.58
    18 18 254.5 2.00
    20 20 314.2 2.47
    22 22 380.1 2.98
    25 25 490.9 3.85
    28 28 615.8 4.83
    32 32 804.2 6.31
    36 36 1018 7.99
    40 40 1257 9.87
    50 50 1964 15.42`,
  // suelzle-stahlpartner.de Bewehrungsdraht
  "DIN-EC2:2013, bars": `
    6 6 28.3 0.222
    8 8 50.3 0.395
    10 10 78.5 0.617
    12 12 113 0.888
    14 14 154 1.21
    16 16 201 1.58`,
  // eurocode.us 5.2.5(3)
  "EC2:2004, hooks": "link 90 10 70\nlink 135/180 5 50",
  // errata pages of the CRSI Manual of Standard Practice: stirrup and tie hooks
  "ACI318:2019, end legs, Table 25.3.2": "link #5 6 3\nlink #8 12",
  "ACI318:2019, hooks, Table 25.3.2": "link 90 #5 6 3\nlink 90 #8 12\nlink 180 #8 4 2.5\nlink 135 #8 6 3",
  // civilsnapshot.com anchoring-shear-reinforcement; civilengineeringtopics.com: IS 456 26.2.2.4 b)
  "IS2502:1963, end legs": "link 8",
  "IS2502:1963, hooks": "link 90 8\nlink 180 4",
  // scribd 705306520: IS 13920:2016
  "IS2502:1963, hooks, link hooks": "link 135 6 65",
  // sashikin-anchor.co.jp, sankoseiko.co.jp: inside radius of the bend test
  "JASS5:2018, mandrels of tests of the bar, never for bending": `
    bend SD295/SD345 16 1.5
    bend SD295 2
    bend SD345 41.3 2
    bend SD345 2.5
    bend SD390 2.5
    bend SD490 25.4 2.5
    bend SD490 3
    bend SR235 1.5
    bend SR295 16 1.5
    bend SR295 2`,
  // usingeurocodes.com eurocode-2-2 953_101: a quarter of the largest bar, 6 mm
  "EC2:2004, bars beside one another": "sizeofcolumnlinks 0.25 6",
  // what-when-how.com, Simplified design of reinforced concrete buildings, page 260: not less than 12 in
  "ACI318:2019, bars beside one another": "leastlap 12",
  // gyanibabaofcivilengineering.blogspot.com 2024/02: 15d or 200 mm; 36 mm. civilsnapshot.com: its own diameter
  "IS2502:1963, bars beside one another": "leastlap 15 200\nlappedbars 36\nbarthatalinkisbentround 1",
  // 1kaoti.com d088cda9ad: no less than the bar
  "GB50204:2015, bars beside one another": "formerofalinkaboutitsbar 1",
};

/** Held twice, word for word. */
const SAME_PAGE: Record<string, string> = {
  "BS8666:2020, bars": "BS8666:2005, bars",
  "BS8666:2020, cold bending needs leave below, C": "BS8666:2005, cold bending needs leave below, C",
  "BS8666:2005, bars beside one another": "EC2:2004, bars beside one another",
  "BS8666:2020, bars beside one another": "EC2:2004, bars beside one another",
  "DIN-EC2:2013, bars beside one another": "EC2:2004, bars beside one another",
  "BS4466:1989, bars": "BS8666:2005, bars",
  "INDIA-SITE, bars": "IS2502:1963, bars",
  "INDIA-SITE, bars beside one another": "IS2502:1963, bars beside one another",
  "INDIA-SITE, end legs": "IS2502:1963, end legs",
  "INDIA-SITE, hooks": "IS2502:1963, hooks",
  "INDIA-SITE, hooks, link hooks": "IS2502:1963, hooks, link hooks",
  "INDIA-SITE, mandrels of tests of the bar, never for bending":
    "IS2502:1963, mandrels of tests of the bar, never for bending",
};

const SHAPES = /shape codes/;

const TRANSCRIBED = [...Object.keys(SECOND_COPY), ...Object.keys(SAME_PAGE)];

/** Published tables by name; several of one name are told apart by clause; shapes are joined by code. */
const published = new Map<string, string[][]>();
for (const tables of REGISTRY) {
  const own = heldTables(tables).filter(({ cite }) => cite.provenance === "published");
  for (const table of own) {
    const name = nameTypedTwice(tables.id, table) ?? `${tables.id}, ${table.what}`;
    published.set(name, [...(published.get(name) ?? []), ...table.rows.map(tokensOf)]);
  }
}

describe("published tables against a second copy", () => {
  it.each([...published])("%s", (name, rows) => {
    const text = SECOND_COPY[SAME_PAGE[name] ?? name];
    if (text === undefined) throw new Error(`no second copy of ${name}`);
    const typed = text
      .trim()
      .split("\n")
      .map((line) => line.trim().split(/\s+/).map(plainToken));
    expect(sorted(rows, name)).toEqual(sorted(typed, name));
  });

  it("holds every table that was transcribed", () => {
    expect(TRANSCRIBED.filter((name) => !published.has(name))).toEqual([]);
  });

  it("tells the coverage which tables were typed twice", () => {
    expect([...TYPED_TWICE].sort()).toEqual([...TRANSCRIBED].sort());
  });

  it("lets the coverage say that all published figures are checked", () => {
    for (const { id } of REGISTRY) {
      const { published: count } = coverage(heldStandard(id)).values;
      expect(count.checked).toBe(count.held);
    }
  });
});

/** A row as the words and figures of its columns; a bound without end has no figure on the page. */
function tokensOf(row: HeldTable["rows"][number]): string[] {
  return Object.entries(row)
    .filter(([column, value]) => column !== "words" && column !== "conflict" && value !== Infinity)
    .filter(([, value]) => typeof value !== "boolean")
    .map(([, value]) => plainToken(Array.isArray(value) ? value.join("/") : String(value)));
}

function plainToken(text: string): string {
  const bare = text.replace(/\s/g, "");
  return /^-?\d+(\.\d+)?$/.test(bare) && !/^0\d/.test(bare) ? String(Number(bare)) : bare;
}

/** Shapes are held in groups by citation, so their order is no matter. */
function sorted(rows: string[][], name: string): string[] {
  const lines = rows.map((row) => row.join(" "));
  return SHAPES.test(name) ? lines.sort() : lines;
}
