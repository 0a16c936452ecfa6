import { encodeXml } from "./encode-xml";

/** Longest beginning of a mark: `<![CDATA[` less one. */
const LONGEST_BEGINNING = 8;

interface Mark {
  readonly open: string;
  readonly close: string;
}

const COMMENT: Mark = { open: "<!--", close: "-->" };
const CDATA: Mark = { open: "<![CDATA[", close: "]]>" };

/**
 * Text with CDATA opened and comments dropped, so that what follows may look for tags alone. Each
 * character is looked at once, whatever stays open.
 */
export function* plainXml(source: Iterable<string>): Generator<string> {
  let held = "";
  let within: Mark | null = null;
  for (const piece of source) {
    // the most of a sheet holds neither: its pieces go through as they are
    if (held === "" && within === null && !piece.includes("<!") && openEnd(piece, 0) === 0) {
      if (piece !== "") yield piece;
      continue;
    }
    const text = held + piece;
    let out = "";
    let at = 0;
    for (;;) {
      const end: number = within === null ? nextMark(text, at) : text.indexOf(within.close, at);
      if (end < 0) break;
      if (within === null) {
        const mark: Mark = text.startsWith(COMMENT.open, end) ? COMMENT : CDATA;
        out += text.slice(at, end);
        within = mark;
        at = end + mark.open.length;
      } else {
        if (within === CDATA) out += encodeXml(text.slice(at, end));
        at = end + within.close.length;
        within = null;
      }
    }
    const rest = text.length - (within === null ? openEnd(text, at) : Math.min(2, text.length - at));
    if (within === null) out += text.slice(at, rest);
    else if (within === CDATA) out += encodeXml(text.slice(at, rest));
    held = text.slice(rest);
    if (out !== "") yield out;
  }
  if (held !== "" && within === null) yield held;
}

/** A whole text with CDATA opened and comments dropped. */
export function plainText(text: string): string {
  return text.includes("<!") ? [...plainXml([text])].join("") : text;
}

function nextMark(text: string, from: number): number {
  for (let at = text.indexOf("<!", from); at >= 0; at = text.indexOf("<!", at + 2))
    if (text.startsWith(COMMENT.open, at) || text.startsWith(CDATA.open, at)) return at;
  return -1;
}

/** Length of a beginning of a mark at the end of a text. */
function openEnd(text: string, from: number): number {
  const at = text.lastIndexOf("<");
  if (at < from || text.length - at > LONGEST_BEGINNING) return 0;
  const end = text.slice(at);
  return COMMENT.open.startsWith(end) || CDATA.open.startsWith(end) ? end.length : 0;
}
