/**
 * Text as it stands between tags and in quoted attributes of XML, SVG and HTML.
 *
 * @example encodeXml('A < "B"') // "A &lt; &quot;B&quot;"
 */
export function encodeXml(text: string): string {
  if (!NEEDS_ENCODING.test(text)) return text;
  return text
    .replace(NOT_XML, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

/** What XML cannot hold, and control characters that it would rather not. */
const NOT_XML = /[^\P{Cc}\t\n\r]|[\uFFFE\uFFFF]/gu;
const NEEDS_ENCODING = /[&<>"\uFFFE\uFFFF]|[^\P{Cc}\t\n\r]/u;
