import JSZip from "jszip";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const RELS = "http://schemas.openxmlformats.org/package/2006/relationships";

export interface HandMadeSheet {
  readonly name: string;
  /** the worksheet part; a text without `<worksheet` is taken as its rows */
  readonly xml: string;
}

/** A workbook of hand-written parts, zipped by JSZip: for what no library writes. */
export async function buildPackage(
  sheets: readonly HandMadeSheet[],
  parts: ReadonlyMap<string, string> = new Map(),
): Promise<Uint8Array> {
  const zip = new JSZip();
  const kind = "application/vnd.openxmlformats-officedocument.spreadsheetml";
  const types = [
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>',
    '<Default Extension="xml" ContentType="application/xml"/>',
    `<Override PartName="/xl/workbook.xml" ContentType="${kind}.sheet.main+xml"/>`,
    ...sheets.map(
      (_, index) =>
        `<Override PartName="/xl/worksheets/sheet${index + 1}.xml" ContentType="${kind}.worksheet+xml"/>`,
    ),
  ];
  zip.file(
    "[Content_Types].xml",
    `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">${types.join("")}</Types>`,
  );
  zip.file(
    "_rels/.rels",
    `<Relationships xmlns="${RELS}"><Relationship Id="rId1" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
  );
  const listed = sheets.map(
    ({ name }, index) => `<sheet name="${name}" sheetId="${index + 1}" r:id="rId${index + 1}"/>`,
  );
  zip.file(
    "xl/workbook.xml",
    `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${listed.join("")}</sheets></workbook>`,
  );
  const related = sheets.map(
    (_, index) =>
      `<Relationship Id="rId${index + 1}" Type="${OFFICE}/worksheet" Target="worksheets/sheet${index + 1}.xml"/>`,
  );
  related.push(`<Relationship Id="rId90" Type="${OFFICE}/styles" Target="styles.xml"/>`);
  related.push(`<Relationship Id="rId91" Type="${OFFICE}/sharedStrings" Target="sharedStrings.xml"/>`);
  zip.file(
    "xl/_rels/workbook.xml.rels",
    `<Relationships xmlns="${RELS}">${related.join("")}</Relationships>`,
  );
  sheets.forEach(({ xml }, index) => {
    const whole = xml.includes("worksheet")
      ? xml
      : `<worksheet xmlns="${MAIN}"><sheetData>${xml}</sheetData></worksheet>`;
    zip.file(`xl/worksheets/sheet${index + 1}.xml`, whole);
  });
  for (const [name, text] of parts) zip.file(name, text);
  return zip.generateAsync({ type: "uint8array", compression: "DEFLATE" });
}
