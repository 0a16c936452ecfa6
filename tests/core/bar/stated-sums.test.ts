import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { sumsIn } from "../../../core/bar/stated-sums";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

describe("sums of legs in a note", () => {
  it.each([
    ["Kaplängd = summa delmått; bygel 2a+2b+2c, krok a+2b.", ["byge 2 2 2", "krok 1 2"]],
    ["staffe: 2a + 2b + 2c (c gancio 135°); spilli: a + 2b (b gancio)", ["staf 2 2 2", "spil 1 2"]],
    ["Bügel: 2xa + 2xb + 2xc", ["buge 2 2 2"]],
    ["lg = zbir mera (uzengije: 2(a+b)+2k)", ["uzen 2 2 0 0 0 0 0 0 0 0 2"]],
    ["Tipos: O estribo 2(a+b)+2g; Gancho g de estribo", ["estr 2 2 0 0 0 0 2"]],
    ["a + b", []],
    ["Stahl B500B + Matten", []],
  ])("should be read out of %s", (note, sums) => {
    expect(sumsIn(note).map(({ shape, times }) => `${shape} ${times.join(" ")}`)).toEqual(sums);
  });
});

describe("a length that a note's sum makes", () => {
  const standard = heldStandard("EC2:2004");
  const told = (note: string) => {
    // common practice: legs measured out to out add up to the length; a hook is counted at both ends
    const rows: Cell[][] = [
      ["Mått i mm", note],
      ["Littera", "Diam", "Antal", "Längd", "Bocktyp", "a", "b", "c"],
      ["201", "Ø20", 24, 3900, "rak", 3900],
      ["202", "Ø20", 24, 1450, "L", 1100, 350],
      ["203", "Ø10", 92, 950, "L", 700, 250],
      ["204", "Ø8", 114, 420, "krok", 240, 90],
      ["208", "Ø8", 10, 1000, "krok", 800, 100, 100],
      ["205", "Ø10", 46, 950, "U", 400, 150, 400],
      ["206", "Ø25", 8, 7100, "U", 450, 6200, 450],
      ["207", "Ø12", 30, 1900, "U", 450, 1000, 450],
    ];
    const { byRow } = runAudit({ sheets: [sheetFromRows("Blad", rows)], standard });
    return byRow.filter(({ code }) => code === "LEN108").map(({ cell }) => cell);
  };

  it("should lack no leg", () => {
    expect(told("Kaplängd = summa delmått; krok a+2b")).toEqual([]);
  });

  it("should lack one where no note says so, or says another sum", () => {
    expect(told("Kaplängd = summa delmått")).toEqual(["H6"]);
    expect(told("Kaplängd = summa delmått; krok a+b")).toEqual(["H6"]);
  });
});

describe("a note's sum in a list that names no shapes", () => {
  const told = (...legs: readonly (number | null)[]) => {
    const sheet = sheetFromRows("Lista", [
      ["Estribos: 2a + 2b + 2c (c = gancho). Demais barras: soma das dobras"],
      ["N", "\u00d8 (mm)", "Quant.", "Comp. (cm)", "a", "b", "c"],
      ...[
        ["N1", 16, 12, 626, 26, 574, 26],
        ["N2", 12, 8, 614, 20, 574, 20],
        ["N4", 10, 16, 183, 20, 163],
        ["N6", 12, 4, 494, 20, 454, 20],
        ["N9", 12, 60, 158, 25, 133],
        ["N12", 10, 90, 200, 30, 140, 30],
      ],
      ["N8", 8, 62, 108, ...legs],
    ]);
    return runAudit({ sheets: [sheet], standard: heldStandard("EC2:2004") })
      .byRow.filter(({ code }) => code === "LEN108")
      .map(({ cell }) => cell);
  };

  it("should make the length of a bar that has all its legs", () => {
    // 2 (9 + 34 + 11) = 108
    expect(told(9, 34, 11)).toEqual([]);
    // 2 (9 + 45) = 108 lacks the hook, and two legs of 54 are no bar of 108
    expect(told(30, 28, 11)).toEqual(["D9"]);
  });
});
