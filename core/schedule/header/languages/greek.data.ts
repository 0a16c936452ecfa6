import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Greek. */
export const GREEK: LanguageWords = {
  language: "Greek",
  provenance: "memory",
  columns: [
    { kind: "mark", words: ["θεση", "αριθμος θεσης", "α/α θεσης", "κωδικος"] },
    { kind: "member", words: ["δομικο στοιχειο", "στοιχειο", "μελος"] },
    { kind: "shape", words: ["σχημα", "κωδικος σχηματος", "μορφη", "σκαριφημα"] },
    { kind: "ignored", words: ["α/α"] },
    { kind: "member", weak: true, otherwise: "remark", words: ["περιγραφη"] },
    { kind: "pour", words: ["σκυροδετηση", "σταδιο σκυροδετησης", "φαση σκυροδετησης"] },
    { kind: "pour", words: ["σταδιο"], weak: true },
    { kind: "remark", words: ["παρατηρησεις", "παρατ"] },
    { kind: "length", words: ["αναπτ μηκος", "αναπτυγμενο μηκος", "μηκος αναπτυγματος"] },
    { kind: "spacing", words: ["αποσταση"] },
    { kind: "former", words: ["τυμπανο", "τυμπανο d", "διαμετρος τυμπανου"] },
    { kind: "grade", words: ["ποιοτητα", "κατηγορια χαλυβα", "χαλυβας"] },
  ],
  parts: {
    count: ["τεμαχια", "τεμ", "πληθος", "αριθμος", "ποσοτητα", "πλ", "αρ", "αριθ"],
    member: ["στοιχειο", "στοιχεια", "στοιχ", "μελος", "μελη", "στοιχειων"],
    total: ["συνολικο", "συνολο", "συνολικα", "ολικο", "ολικα", "συνολικος", "ολικος", "συνολικη", "συν"],
    length: ["μηκος"],
    mass: ["βαρος"],
    size: ["διαμετρος"],
    per: ["ανα", "σε"],
    one: ["μοναδιαιο", "μοναδας"],
    metre: ["μετρο"],
    bar: ["ραβδος", "ραβδου", "ραβδων", "ραβδοι", "οπλισμος", "σιδηρος"],
  },
  rows: [
    { use: "total", words: ["συνολο", "αθροισμα", "γενικο συνολο", "συνολικο βαρος"] },
    { use: "members-said", words: ["τεμ", "τεμαχια", "τεμαχιο"] },
    { use: "running-metres", words: ["τρεχοντα μετρα", "τρεχ μετρα", "μμ τρεχ"] },
    { use: "carried", words: ["εις μεταφοραν", "εκ μεταφορας", "μεταφορα", "σε μεταφορα"] },
    { use: "subtotal", words: ["μερικο συνολο"] },
  ],
};
