import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { textConstant } from "../../../addin/workbook/defined-name";
import { settingPieces } from "../../../addin/workbook/setting-pieces";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { auditSettings } from "../../../core/audit/audit-settings";
import { settingsToText } from "../../../core/audit/settings-text";
import { barwright } from "../../_support/command-line";

const folder = mkdtempSync(join(tmpdir(), "barwright-settings-"));
const HEADER = ["Member", "Bar mark", "Type and size", "Total no.", "Length (mm)", "Shape code", "A", "Bend"];
/** 1,025 against 1,000 by the dims; 9,500 is within 12 m of stock, and 23.4 kg is below the hand-lift figure */
const ROWS = [
  HEADER,
  ["B1", "01", "H16", 2, 1025, "00", 1000, 40],
  ["B1", "02", "H20", 2, 9500, "00", 9500, 80],
];

async function codesOf(name: string, stored: string | null, without = "") {
  const pieces = stored === null ? [] : [...settingPieces("Barwright.Audit", stored)];
  const names = new Map(
    pieces.filter(([piece]) => piece !== without).map(([piece, text]) => [piece, textConstant(text)]),
  );
  const path = join(folder, name);
  writeFileSync(path, writeNewWorkbook({ sheets: [{ name: "S", rows: ROWS }], names }));
  const run = await barwright(["check", path, "--json"]);
  const { findings } = JSON.parse(run.out) as { findings: { code: string; cell: string | null }[] };
  return findings.map(({ code, cell }) => `${code} ${cell}`);
}

describe("barwright check with the workbook's own settings", () => {
  it("takes waivers, changed limits and rules turned off from the name Barwright.Audit", async () => {
    expect(await codesOf("plain.xlsx", null)).toEqual(expect.arrayContaining(["LEN102 E2", "READ104 null"]));
    const settings = auditSettings.parse({
      rulesOff: ["READ104"],
      limits: { stockLength: 9000 },
      // long enough for several literals of a formula
      waivers: [
        { code: "LEN102", sheet: "S", key: "B1 | 01", reason: `agreed ${"with the site ".repeat(60)}` },
      ],
    });
    const found = await codesOf("kept.xlsx", settingsToText(settings));
    expect(found).toContain("SUPPLY101 E3");
    expect(found.filter((one) => /^(LEN102|READ104|SETTING)/.test(one))).toEqual([]);
  });

  it("reads a column as its user corrected it", async () => {
    // BS 8666:2005 Table 2: the least former of a 16 mm bar is 64 mm
    const readings = [{ sheet: "S", columns: [{ column: "Bend", kind: "former" }] }];
    expect(await codesOf("as-it-is.xlsx", null)).not.toContain("BEND101 H2");
    expect(await codesOf("corrected.xlsx", settingsToText(auditSettings.parse({ readings })))).toContain(
      "BEND101 H2",
    );
  });

  it("takes waivers kept over several names, and says which name is missing", async () => {
    const waivers = [
      { code: "LEN102", sheet: "S", key: "B1 | 01", reason: `agreed ${"with the site ".repeat(2_000)}` },
    ];
    const stored = settingsToText(auditSettings.parse({ waivers }));
    expect(await codesOf("several.xlsx", stored)).not.toContain("LEN102 E2");
    const found = await codesOf("missing.xlsx", stored, "Barwright.Audit.2");
    expect(found).toEqual(expect.arrayContaining(["LEN102 E2", "SETTING102 null"]));
    const run = await barwright(["check", join(folder, "missing.xlsx")]);
    expect(run.out).toMatch(/the name Barwright\.Audit\.2 is missing, one of 4 parts.*could not be judged/);
  });

  it("lists waivers, rules turned off and limits changed with their reasons, names and dates", async () => {
    const named = { by: "A. Detailer", date: "2031-03-02" };
    const waiver = (code: string, key: string | null, reason: string, sheet = "S") => ({
      code,
      sheet,
      key,
      reason,
      ...named,
    });
    const settings = auditSettings.parse({
      rulesOff: [{ code: "READ104", reason: "known", ...named }, "LEN103"],
      // of the Shop sheet none: 9,500 mm is over the stock length that is set, and H20 at 2.466 kg/m is 23.4 kg
      limits: { stockLength: 9000, handLift: { value: 30, reason: "two people", ...named } },
      waivers: [
        waiver("LEN102", "B1 | 01", "agreed with the site"),
        waiver("SUM101", "B1 | 01", "was wrong once"),
        waiver("LEN102", "B1 | 01", "of the old job", "Gone"),
      ],
    });
    await codesOf("listed.xlsx", settingsToText(settings));
    const path = join(folder, "listed.xlsx");
    const { out } = await barwright(["check", path]);
    const lines = out.split("\n");
    const from = lines.indexOf("WAIVED (3)");
    expect(lines.slice(from + 1, from + 7)).toEqual([
      expect.stringMatching(/^ {2}S!E2 {2}.*1025.*\[LEN102\]$/),
      "      by A. Detailer, 2031-03-02: agreed with the site",
      "  S, B1 | 01  no longer applies: delete it  [SUM101 total differs]",
      "      by A. Detailer, 2031-03-02: was wrong once",
      expect.stringMatching(/^ {2}Gone, B1 \| 01 {2}its sheet was not checked {2}\[LEN102 /),
      "      by A. Detailer, 2031-03-02: of the old job",
    ]);
    expect(out).toContain(
      "RULES TURNED OFF (2)\n  READ104  facts not held\n      by A. Detailer, 2031-03-02: known (1 finding not told)\n",
    );
    expect(out).toContain(
      "  LEN103  varying set one length\n      no name given, no date given: no reason given (nothing is hidden by it now)\n",
    );
    expect(out).toContain(
      "LIMITS CHANGED (2)\n  lifted by hand up to: 30 kg\n      by A. Detailer, 2031-03-02: two people (nothing is hidden by it now)\n",
    );
    expect(out).toMatch(
      /; not told of 1 row of 2 bars by 1 waiver, 2 rules off, 2 changed limits; \d+\.\d{3} t\n$/,
    );
    const json = await barwright(["check", path, "--json"]);
    const told = JSON.parse(json.out);
    expect(Object.keys(told)).toEqual([
      "standard",
      "rows",
      "sheets",
      "reading",
      "findings",
      "waivers",
      "counts",
      "notInTotal",
    ]);
    expect(told.waivers).toEqual([
      { rule: "LEN102", sheet: "S", row: 2, reason: "agreed with the site", ...named, bars: 1, pieces: 2 },
      { rule: "READ104", sheet: null, row: null, reason: "known", ...named, bars: 0, pieces: 0 },
      { rule: "LEN103", sheet: null, row: null, reason: "", by: "", date: "", bars: 0, pieces: 0 },
      { rule: "LIFT101", sheet: null, row: null, reason: "two people", ...named, bars: 0, pieces: 0 },
      { rule: "SUPPLY101", sheet: null, row: null, reason: "", by: "", date: "", bars: 0, pieces: 0 },
    ]);
    expect(told.counts.unsafe).toEqual({ broken: 0, unsure: 0 });
    expect(json.err).toContain("not told of 1 row of 2 bars by 1 waiver, 2 rules off, 2 changed limits");
  });

  it("goes on telling what is unsafe where its rule is turned off, and says so", async () => {
    const readings = [{ sheet: "S", columns: [{ column: "Bend", kind: "former" }] }];
    const settings = auditSettings.parse({ readings, rulesOff: ["BEND101"] });
    const found = await codesOf("unsafe-off.xlsx", settingsToText(settings));
    expect(found).toContain("BEND101 H2");
    expect(found).toContain("SETTING103 null");
  });

  it("leaves a waived unsafe bar out of the exit code, and says that on standard error", async () => {
    const readings = [{ sheet: "S", columns: [{ column: "Bend", kind: "former" }] }];
    // BS 8666:2005 Table 2: the least former of a 16 mm bar is 64 mm, of a 20 mm bar 140 mm
    const waiver = (key: string) => ({ code: "BEND101", sheet: "S", key, reason: "seen", by: "A. Detailer" });
    const run = async (name: string, waivers: unknown[]) => {
      await codesOf(name, settingsToText(auditSettings.parse({ readings, waivers })));
      return barwright(["check", join(folder, name), "--json"]);
    };
    expect((await run("unwaived.xlsx", [])).exit).toBe(1);
    expect((await run("half.xlsx", [waiver("B1 | 01")])).exit).toBe(1);
    const all = await run("waived.xlsx", [waiver("B1 | 01"), waiver("B1 | 02")]);
    expect(all.exit).toBe(0);
    expect(all.err).toContain("not counted in the exit code: 2 unsafe and 0 unbendable, not told");
  });

  it("says nothing of decisions where the workbook keeps none", async () => {
    await codesOf("none.xlsx", null);
    expect((await barwright(["check", join(folder, "none.xlsx")])).out).not.toMatch(
      /WAIVED|TURNED|CHANGED|not told/,
    );
  });

  it("tells of a waiver that no longer applies, and of settings that cannot be read", async () => {
    const waivers = [{ code: "SUM101", sheet: "S", key: "B1 | 01", reason: "was wrong once" }];
    expect(await codesOf("outdated.xlsx", settingsToText(auditSettings.parse({ waivers })))).toContain(
      "SETTING101 B2",
    );
    expect(await codesOf("broken.xlsx", "{no json")).toContain("SETTING102 null");
  });
});
