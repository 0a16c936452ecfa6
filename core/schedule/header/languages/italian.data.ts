import type { LanguageWords } from "../language-words";

/** Column headings, Italian. */
export const ITALIAN: LanguageWords = {
  language: "Italian",
  provenance: "common practice",
  columns: [
    { kind: "former", words: ["mandrino", "diametro mandrino", "diametro del mandrino"] },
    { kind: "member", words: ["elemento strutturale", "ubicazione", "struttura"] },
    { kind: "mark", words: ["posizione", "marca", "pos ferro", "sigla"] },
    { kind: "size", words: ["diametro", "diam", "tondo", "diametro ferro"] },
    { kind: "members", words: ["n elementi", "no elementi", "numero elementi", "no pezzi uguali"] },
    { kind: "each", words: ["ferri per elemento", "no per elemento", "barre per elemento"] },
    {
      kind: "total",
      words: [
        "n ferri",
        "no ferri",
        "numero ferri",
        "n barre",
        "no barre",
        "numero barre",
        "no totale",
        "n pezzi",
      ],
    },
    {
      kind: "length",
      words: [
        "lunghezza",
        "lung",
        "lungh",
        "lunghezza unitaria",
        "lungh unit",
        "lunghezza di taglio",
        "lunghezza taglio",
      ],
    },
    // of one bar or of all
    { kind: "length", weak: true, otherwise: "totalLength", words: ["sviluppo"] },
    {
      kind: "totalLength",
      words: ["lunghezza totale", "lungh tot", "lungh totale", "l tot", "lung tot", "sviluppo totale"],
    },
    { kind: "shape", words: ["sagoma", "schizzo", "forma ferro", "piegatura"] },
    { kind: "mass", words: ["peso totale", "peso tot", "massa totale"] },
    { kind: "unitMass", words: ["peso unitario", "peso al metro", "peso al m"] },
    { kind: "grade", words: ["acciaio", "tipo acciaio", "classe acciaio"] },
    { kind: "spacing", words: ["passo", "interasse"] },
    // a casting of concrete
    { kind: "pour", words: ["getto", "fase di getto", "no getto", "n getto", "fase del getto"] },
    { kind: "pour", words: ["fase"], weak: true },
    { kind: "remark", words: ["note", "osservazioni", "annotazioni"] },
    { kind: "totalLength", words: ["l totale"] },
    { kind: "member", weak: true, words: ["descrizione", "parte d opera"] },
    { kind: "total", weak: true, words: ["totale"] },
    { kind: "member", weak: true, words: ["elementi"] },
  ],
  parts: {
    count: ["numero", "num", "quantita", "pezzi", "pz", "nr"],
    member: ["elemento", "elementi", "struttura", "manufatto"],
    total: ["totale", "totali", "tot", "complessivo", "complessiva"],
    length: ["lunghezza", "lunghezze", "lung", "lungh", "sviluppo"],
    mass: ["peso", "massa"],
    size: ["diametro"],
    per: ["per", "al", "ad", "nel"],
    one: ["singolo", "singola", "unitario", "unitaria", "unitari", "unitarie", "cad", "cadauno"],
    metre: ["metro"],
    bar: ["barra", "barre", "ferro", "ferri", "tondino", "taglio", "di", "del", "della"],
  },
  rows: [
    { use: "total", words: ["somma", "totale complessivo", "totale generale", "peso totale"] },
    { use: "members-said", words: ["n", "nr", "pz", "pezzi", "n pezzi", "n elementi"] },
    { use: "running-metres", words: ["ml", "m.l", "m l", "metri lineari", "metro lineare"] },
    { use: "carried", words: ["a riportare", "da riportare", "riporto", "riporti"] },
    { use: "subtotal", words: ["parziale", "subtotale", "totale parziale", "sommano", "totale pagina"] },
  ],
};
