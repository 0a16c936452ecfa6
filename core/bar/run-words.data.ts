import type { Cited } from "../standards/citation";

/** Words that stand before the run which bars are spread over, lower case: "@ 200 over 4000", "c/20 em 420". */
export const RUN_WORDS: Cited<readonly string[]> = {
  value: [
    ...["over", "across", "along", "in a width of", "in width", "width", "height", "run", "length"],
    ...["em", "en", "auf", "über", "sur", "largeur", "longueur", "hauteur", "su", "larghezza", "altezza"],
    ...["largura", "altura", "ancho", "largo", "breite", "länge", "höhe", "breedte", "lengte", "hoogte"],
    ...["πλάτος", "ύψος", "μήκος", "на", "по", "длина", "ширина", "высота", "на длине", "na", "po"],
    ...[
      "på",
      "över",
      "leveydelle",
      "matkalla",
      "boyunca",
      "genişlik",
      "lnet",
      "dağıtım boyu",
      "pada",
      "sepanjang",
      "lebar",
      "trên",
    ],
    ...["على", "بعرض", "بطول", "范围", "范围内", "区間", "구간"],
  ],
  cite: { document: "remarks in bar schedules by country", provenance: "common practice" },
};
