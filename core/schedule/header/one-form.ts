/** One form for what is written in two: Arabic letters with and without their signs, Turkish and Vietnamese ones. */
export function oneForm(text: string): string {
  return (
    text
      // й and ї as headings are compared
      .normalize("NFD")
      .replace(/[\u0300-\u036f]/g, "")
      .normalize("NFC")
      .replace(/[\u0622\u0623\u0625]/g, "\u0627")
      .replace(/\u0629/g, "\u0647")
      .replace(/[\u0649\u06cc]/g, "\u064a")
      .replace(/\u06a9/g, "\u0643")
      .replace(/[\u0640\u064b-\u0652\u200c]/g, "")
      .replace(/đ/g, "d")
      .replace(/æ/g, "ae")
      // signs that are spread over a cell
      .replace(/(?<=\p{Script=Han}) (?=\p{Script=Han})/gu, "")
      // where a diameter sign may be meant they are all one
      .replace(/[\u03c6\u03d5\u0444]/g, "ø")
  );
}
