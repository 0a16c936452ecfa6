import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { Seeded } from "../corpus/seeded";

/** Pieces of XML that a reader may trip over, put where they do not belong. */
const PIECES = [
  ...["<", ">", '"', "'", "/", "<!--", "-->", "<![CDATA[", "]]>", "&amp;", "&#0;", "&#x110000;", "&bogus;"],
  ...[
    '<row r="1">',
    "</row>",
    "</sheetData>",
    "<sheetData>",
    "<sheetData/>",
    '<c r="ZZZZ1"/>',
    '<c r="" s="-1"/>',
  ],
  ...['<c r="A1" t="s"><v>999999999</v></c>', '<c s="1e9"/>', "<v>", "</v>", "<f>", '<f t="shared" si="0"/>'],
  ...[
    "<is><t>x</t></is>",
    '<mergeCell ref="A1:XFD1048576"/>',
    '<mergeCell ref="B2:A1"/>',
    "<xf/>",
    "<fill/>",
  ],
  ...[
    '<legacyDrawing r:id="rId1"/>',
    '<comment ref="ZZ"/>',
    'authorId="99"',
    ' r="5"',
    ' t="s"',
    ' s="99999"',
  ],
  ...['count="-1"', 'ref="A0"', 'numFmtId="x"', 'Target="../../../x"', 'Id="rId1"', 'sheetId="x"', 'name=""'],
  ...[
    '<definedName name="_xlnm.Print_Area" localSheetId="99">x</definedName>',
    "\0",
    "\uffff",
    "NaN",
    "1e999",
  ],
];
const VALUES = ["", "-1", "0", "99999999999", "x", "1e5", "A1", "rId99", "NaN", "true", "../x", "&lt;"];
const TELLING = /sheet\d*\.xml$|styles|workbook|sharedS|comments|vml|Content/;

/** A package with a few of its parts or bytes spoiled. */
export function mutatedPackage(bytes: Uint8Array, random: Seeded): Uint8Array {
  const parts = unzipSync(bytes);
  const names = Object.keys(parts).filter((name) => /\.(xml|rels|vml)$/.test(name));
  if (random.chance(0.15)) return spoiledBytes(zipSync(parts, { level: 1 }), random);
  for (let times = random.between(1, 2); times > 0; times -= 1) {
    const telling = names.filter((name) => TELLING.test(name));
    const name = random.pick(random.chance(0.6) ? telling : names);
    parts[name] = strToU8(mutatedText(strFromU8(parts[name]!), random));
  }
  if (random.chance(0.05)) delete parts[random.pick(names)];
  return zipSync(parts, { level: 1 });
}

function spoiledBytes(bytes: Uint8Array, random: Seeded): Uint8Array {
  for (let times = random.between(1, 6); times > 0; times -= 1)
    bytes[random.between(0, bytes.length - 1)] = random.between(0, 255);
  return random.chance(0.2) ? bytes.slice(0, random.between(0, bytes.length)) : bytes;
}

function mutatedText(text: string, random: Seeded): string {
  let out = text;
  for (let times = random.between(1, 4); times > 0; times -= 1) {
    const start = random.between(0, out.length);
    const end = Math.min(out.length, start + random.between(0, random.pick([1, 5, 50, 500])));
    const [before, within, behind] = [out.slice(0, start), out.slice(start, end), out.slice(end)];
    const kind = random.between(0, 5);
    if (kind === 0) out = before + behind;
    else if (kind === 1) out = before + random.pick(PIECES) + within + behind;
    else if (kind === 2) out = before + within.repeat(random.between(2, 4)) + behind;
    else if (kind === 3) {
      const from = random.between(0, out.length);
      out = before + out.slice(from, from + end - start) + behind;
    } else if (kind === 4) out = before + String.fromCharCode(random.between(0, 255)) + out.slice(start + 1);
    else {
      const values = [...out.matchAll(/"[^"<>]*"/g)];
      if (values.length === 0) continue;
      const value = random.pick(values);
      out = `${out.slice(0, value.index)}"${random.pick(VALUES)}"${out.slice(value.index + value[0].length)}`;
    }
  }
  return out;
}
