import type { Cited } from "../standards/citation";

/** Beginnings of the words for a hook, as headings have them; without accents, in lower case. */
export const HOOK_WORDS: Cited<readonly string[]> = {
  value: [
    ...["hook", "hks", "haken", "haak", "haken", "hake", "krog", "krok", "koukku"],
    ...["crochet", "retour", "gancio", "ganci", "gancho", "patilla", "carlig", "kampo"],
    ...["hak", "hac", "kuka", "kljuk", "kanca", "kait", "moc", "αγκ", "крюк", "гак", "кук"],
    ...["余長", "フック", "弯钩", "彎鉤", "훅", "갈고리", "خطاف", "جنش", "قلاب", "uncin", "וו", "קרס"],
  ],
  cite: { document: "headings of hooks in bar lists", provenance: "memory" },
};
