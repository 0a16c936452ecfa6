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
  it("takes silences, changed limits and rules turned off from the name Barwright.Audit", async () => {
    expect(await codesOf("plain.xlsx", null)).toEqual(expect.arrayContaining(["LEN102 E2", "READ104 null"]));
    const settings = auditSettings.parse({
      rulesOff: ["READ104"],
      limits: { stockLength: 9000 },
      // long enough for several literals of a formula
      silences: [
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

  it("takes silences kept over several names, and says which name is missing", async () => {
    const silences = [
      { code: "LEN102", sheet: "S", key: "B1 | 01", reason: `agreed ${"with the site ".repeat(2_000)}` },
    ];
    const stored = settingsToText(auditSettings.parse({ silences }));
    expect(await codesOf("several.xlsx", stored)).not.toContain("LEN102 E2");
    const found = await codesOf("missing.xlsx", stored, "Barwright.Audit.2");
    expect(found).toEqual(expect.arrayContaining(["LEN102 E2", "SETTING102 null"]));
    const run = await barwright(["check", join(folder, "missing.xlsx")]);
    expect(run.out).toMatch(/the name Barwright\.Audit\.2 is missing, one of 4 parts.*could not be judged/);
  });

  it("lists silences with their reasons, rules turned off and limits changed", async () => {
    const silence = (code: string, key: string | null, reason: string, sheet = "S") => ({
      code,
      sheet,
      key,
      reason,
    });
    const settings = auditSettings.parse({
      rulesOff: ["READ104"],
      limits: { stockLength: 9000, hoist: 800 },
      silences: [
        silence("LEN102", "B1 | 01", "agreed with the site"),
        silence("SUM101", "B1 | 01", "was wrong once"),
        silence("READ104", null, "known"),
        silence("LEN102", "B1 | 01", "of the old job", "Gone"),
      ],
    });
    await codesOf("listed.xlsx", settingsToText(settings));
    const { out } = await barwright(["check", join(folder, "listed.xlsx")]);
    const lines = out.split("\n");
    const from = lines.indexOf("SILENCED (4)");
    expect(lines.slice(from + 1, from + 9)).toEqual([
      expect.stringMatching(/^ {2}S!E2 {2}.*1025.*\[LEN102\]$/),
      "      reason: agreed with the site",
      "  S, B1 | 01  no longer applies: delete it  [SUM101 total differs]",
      "      reason: was wrong once",
      "  S  its rule is turned off  [READ104 facts not held]",
      "      reason: known",
      expect.stringMatching(/^ {2}Gone, B1 \| 01 {2}its sheet was not checked {2}\[LEN102 /),
      "      reason: of the old job",
    ]);
    expect(out).toContain("RULES TURNED OFF (1)\n  READ104  facts not held\n");
    expect(out).toContain(
      "LIMITS CHANGED (2)\n  crane or hoist lifts: 800 kg\n  longest stock length: 9000 mm\n",
    );
    // scripts get what the contract says and nothing else
    const json = JSON.parse((await barwright(["check", join(folder, "listed.xlsx"), "--json"])).out);
    expect(Object.keys(json)).toEqual(["standard", "rows", "sheets", "findings"]);
  });

  it("says nothing of decisions where the workbook keeps none", async () => {
    await codesOf("none.xlsx", null);
    expect((await barwright(["check", join(folder, "none.xlsx")])).out).not.toMatch(
      /SILENCED|TURNED|CHANGED/,
    );
  });

  it("tells of a silence that no longer applies, and of settings that cannot be read", async () => {
    const silences = [{ code: "SUM101", sheet: "S", key: "B1 | 01", reason: "was wrong once" }];
    expect(await codesOf("outdated.xlsx", settingsToText(auditSettings.parse({ silences })))).toContain(
      "SETTING101 B2",
    );
    expect(await codesOf("broken.xlsx", "{no json")).toContain("SETTING102 null");
  });
});
