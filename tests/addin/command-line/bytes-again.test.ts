import { describe, expect, it } from "vitest";
import { BytesAgain } from "../../../addin/command-line/bytes-again";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";

const BOOK = writeNewWorkbook({
  sheets: [
    { name: "List", rows: [["Mark", "Size"]] },
    { name: "More", rows: [["Remark"]] },
  ],
});

describe("BytesAgain", () => {
  it("should hold the bytes until they are let go, and read them once more after that", () => {
    let read = 0;
    const file = new BytesAgain(BOOK, () => [BOOK.slice()][read++]!, "b.xlsx");
    expect(file.bytes).toBe(BOOK);
    expect(read).toBe(0);
    file.letGo();
    expect([...file.bytes]).toEqual([...BOOK]);
    expect(file.bytes).not.toBe(BOOK);
    expect(read).toBe(1);
  });

  it("should refuse a file that became another one meanwhile", () => {
    const file = new BytesAgain(BOOK, () => BOOK.slice(1), "b.xlsx");
    file.letGo();
    expect(() => file.bytes).toThrow("b.xlsx was saved by another program meanwhile: check it again");
  });

  it("should have a workbook read its parts from the bytes as they are read again", () => {
    let again = BOOK.slice();
    const file = new BytesAgain(BOOK, () => again, "b.xlsx");
    const workbook = openWorkbook(file);
    file.letGo();
    expect(workbook.read("List").cell(0, 1)).toBe("Size");
    // its own bytes changed, which the check sum of the part tells
    again = BOOK.slice().fill(7, 60, BOOK.length - 600);
    file.letGo();
    expect(() => workbook.read("More")).toThrow(/damaged/);
  });
});
