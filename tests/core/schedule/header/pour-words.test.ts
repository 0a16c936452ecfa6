import { describe, expect, it } from "vitest";
import { runAudit } from "../../../../core/audit/run-audit";
import { columnsUnread } from "../../../../core/schedule/columns-unread";
import { recogniseHeader } from "../../../../core/schedule/header/recognise-header";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import type { Standard } from "../../../../core/standards/port";
import { resolveStandard } from "../../../../core/standards/resolve-standard";

describe("the column of a pour", () => {
  // common practice: words for a stretch that is concreted in one go
  it.each([
    ...[
      "Bauabschnitt",
      "Betonierabschnitt",
      "Takt",
      "Coulée",
      "Phase de bétonnage",
      "Fase di getto",
      "Getto",
    ],
    ...["Vertido", "Tongada", "Fase de hormigonado", "Betonagem", "Concretagem", "Stort", "Stortfase"],
    ...["Etap betonowania", "Beton dökümü", "Захватка", "Gjutetapp", "Støpeetappe", "Betonáž", "Pengecoran"],
    ...[
      "Etapa de turnare",
      "Đợt đổ",
      "Σκυροδέτηση",
      "Kampada",
      "Valulohko",
      "浇筑段",
      "打設区画",
      "타설구간",
    ],
    ...["رقم الصبة", "יציקה"],
  ])("is headed %s", (header) => expect(recogniseHeader(header)?.kind).toBe("pour"));

  it("gives way where another column is named for the pour", () => {
    const heads = ["Pos", "Fase", "Getto", "Ø mm", "N. barre", "Lunghezza cm"];
    const rows = [heads, ["1", "x", "G1", 12, 10, 250], ["2", "y", "G2", 12, 14, 350]];
    const standard = resolveStandard("EC2:2004") as Standard;
    const { bars } = readSchedule(sheetFromRows("Ferri", rows), standard);
    expect(bars.map(({ pour }) => pour)).toEqual(["G1", "G2"]);
  });
});

describe("a filled column that nobody read", () => {
  const standard = resolveStandard("DIN-EC2:2013") as Standard;
  const heads = ["Pos.", "Stück", "Ø [mm]", "Einzellänge [m]", "Kran", "Bemerkung"];
  const row = (at: number, kran: Cell): Cell[] => [at, 4, 12, 2 + at, kran, null];
  const sheet = (krans: readonly Cell[]) =>
    sheetFromRows("Liste", [heads, ...krans.map((kran, at) => row(at + 1, kran))]);
  const told = (krans: readonly Cell[]) =>
    runAudit({ sheets: [sheet(krans)], standard }).findings.filter(({ message }) => message.includes("Kran"));

  it("is told once where it holds words beside most bars", () => {
    const [finding, ...others] = told(["West", "Ost", "Ost", null]);
    expect(others).toEqual([]);
    expect([finding?.code, finding?.severity, finding?.row]).toEqual(["READ104", "note", null]);
    expect(finding?.message).toMatch(/^column "Kran" holds words in most rows/);
  });

  it("is not told of where it holds few words, or numbers", () => {
    expect(told(["West", null, null, null])).toEqual([]);
    expect(told([1, 2, 3, 4])).toEqual([]);
  });

  it("is named by what explains a reading, with how often it is filled", () => {
    const few = sheet(["West", null, 7, null]);
    expect(columnsUnread(few, readSchedule(few, standard))).toEqual([
      { column: "E", header: "Kran", filled: 2 },
    ]);
  });
});
