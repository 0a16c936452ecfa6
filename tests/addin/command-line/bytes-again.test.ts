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

/** As a file that holds `whole()` when it is read. */
const source = (whole: () => Uint8Array) => ({
  read: (start: number, end: number) => {
    const bytes = whole();
    return { length: bytes.length, bytes: bytes.subarray(start, end) };
  },
});

describe("BytesAgain", () => {
  it("should hold the bytes until they are let go, and read them once more after that", () => {
    let read = 0;
    const file = new BytesAgain(
      BOOK,
      source(() => [BOOK.slice()][read++]!),
      "b.xlsx",
    );
    expect(file.bytes).toBe(BOOK);
    expect(read).toBe(0);
    file.letGo();
    expect([...file.bytes]).toEqual([...BOOK]);
    expect(file.bytes).not.toBe(BOOK);
    expect(read).toBe(1);
  });

  it("should read a part alone once all were let go", () => {
    const asked: [number, number][] = [];
    const file = new BytesAgain(
      BOOK,
      {
        read: (start, end) => {
          asked.push([start, end]);
          return { length: BOOK.length, bytes: BOOK.slice(start, end) };
        },
      },
      "b.xlsx",
    );
    expect([...file.part(2, 6)]).toEqual([...BOOK.slice(2, 6)]);
    file.letGo();
    expect([...file.part(2, 6)]).toEqual([...BOOK.slice(2, 6)]);
    expect([...file.part(0, 2)]).toEqual([0x50, 0x4b]);
    expect(asked).toEqual([
      [2, 6],
      [0, 2],
    ]);
  });

  it("should refuse a file that became another one meanwhile", () => {
    const file = new BytesAgain(
      BOOK,
      source(() => BOOK.slice(1)),
      "b.xlsx",
    );
    file.letGo();
    expect(() => file.part(0, 4)).toThrow("b.xlsx was saved by another program meanwhile: check it again");
    expect(() => file.bytes).toThrow("b.xlsx was saved by another program meanwhile: check it again");
  });

  it("should have a workbook read its parts from the bytes as they are read again", () => {
    let again = BOOK.slice();
    const file = new BytesAgain(
      BOOK,
      source(() => again),
      "b.xlsx",
    );
    const workbook = openWorkbook(file);
    file.letGo();
    expect(workbook.read("List").cell(0, 1)).toBe("Size");
    // its own bytes changed, which the check sum of the part tells
    again = BOOK.slice().fill(7, 60, BOOK.length - 600);
    file.letGo();
    expect(() => workbook.read("More")).toThrow(/damaged/);
  });
});
