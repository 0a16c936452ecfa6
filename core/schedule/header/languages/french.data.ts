import type { LanguageWords } from "../language-words";

/** Column headings, French. */
export const FRENCH: LanguageWords = {
  language: "French",
  provenance: "common practice",
  columns: [
    { kind: "member", words: ["element", "ouvrage", "partie d ouvrage", "localisation"] },
    { kind: "mark", words: ["repere", "rep", "repere barre", "n repere", "no repere"] },
    { kind: "size", words: ["diametre", "diam", "ø", "ha"] },
    { kind: "grade", words: ["nuance", "acier", "type d acier"] },
    {
      kind: "members",
      words: ["nombre d elements", "nb d elements", "nombre elements", "nb elem", "nbre d elements"],
    },
    {
      kind: "each",
      words: [
        "nombre par element",
        "nb par element",
        "par element",
        "nombre dans un element",
        "nb elem unitaire",
      ],
    },
    { kind: "total", words: ["nombre total", "nb total"] },
    {
      kind: "length",
      words: [
        "longueur developpee",
        "longueur unitaire",
        "longueur totale developpee",
        "lg developpee",
        "longueur de coupe",
        "long dev",
      ],
    },
    {
      kind: "shape",
      words: ["faconnage", "forme", "code forme", "croquis", "schema", "croquis de faconnage"],
    },
    { kind: "mass", words: ["masse", "poids", "masse totale", "poids total"] },
    {
      kind: "unitMass",
      words: ["masse lineique", "poids/m", "poids unitaire", "poids au metre", "masse lin"],
    },
    { kind: "totalLength", words: ["longueur totale", "longueur cumulee", "lg totale"] },
    { kind: "spacing", words: ["espacement", "esp"] },
    { kind: "former", words: ["mandrin", "ø mandrin"] },
    { kind: "coating", words: ["revetement"] },
    {
      kind: "pour",
      words: [
        "coulage",
        "coulee",
        "no coulee",
        "phase de coulage",
        "phase de betonnage",
        "plot de betonnage",
      ],
    },
    { kind: "pour", words: ["phase", "levee"], weak: true },
    { kind: "revision", words: ["indice", "ind"] },
    { kind: "remark", words: ["observation", "observations", "remarque", "remarques", "obs"] },
    { kind: "size", words: ["ø ha", "ha ø"] },
    { kind: "length", words: ["l dev", "l developpee", "l unitaire", "l unit", "lg unit", "l coupe"] },
    { kind: "totalLength", words: ["l totale", "lg tot", "l cumulee"] },
    { kind: "members", words: ["nb pieces identiques", "nb pieces", "nombre de pieces identiques"] },
    { kind: "member", words: ["repere element"] },
  ],
  parts: {
    count: ["nombre", "nb", "nbre", "qte", "quantite"],
    member: ["el", "element", "elements", "elt", "elts", "ouvrage", "ouvrages"],
    total: ["total", "totale", "cumule", "cumulee", "ensemble", "totaux"],
    length: ["longueur", "longueurs", "developpe", "developpee"],
    mass: ["poids", "masse"],
    size: ["diametre"],
    per: ["par", "au", "dans", "pour"],
    one: ["unitaire", "unitaires"],
    metre: ["ml"],
    bar: ["barre", "barres", "acier", "aciers", "coupe", "fer", "fers", "d", "de", "des"],
  },
  rows: [
    { use: "members-said", words: ["nb", "nbre", "nombre", "ex", "exemplaires", "fois"] },
    { use: "running-metres", words: ["ml", "m.l", "m l", "metre lineaire", "metres lineaires"] },
    { use: "carried", words: ["a reporter", "report", "total a reporter", "reports"] },
  ],
};
