/** Labels of a title block, without accents and points, in the order in which they are asked. */
interface TitleWords {
  /** what is such a label wherever it stands */
  readonly own: readonly string[];
  /** what is one only with a colon, or in a row that has another label */
  readonly besideOthers: readonly string[];
}

/** What a schedule is called by: common practice of the forms of offices, by country from memory. */
export const TITLE_WORDS: Readonly<Record<"job" | "schedule" | "drawing" | "revision" | "date", TitleWords>> =
  {
    job: {
      own: [
        "job",
        "project",
        "contract",
        "job no",
        "job number",
        "contract no",
        "site ref",
        "site reference",
      ],
      besideOthers: [],
    },
    schedule: {
      own: ["schedule ref", "schedule no", "schedule reference"],
      besideOthers: [
        ...["schedule number", "bar schedule no", "bar schedule ref", "bar bending schedule no"],
        ...["bending schedule no", "bbs no", "bar schedule", "bbs", "schedule"],
      ],
    },
    drawing: {
      own: ["drawing no", "drawing number", "drawing", "dwg no", "dwg", "plan nr", "plan no", "no plan"],
      besideOthers: [
        ...["plan", "plano no", "plano", "tavola", "disegno"],
        ...["tegning", "ritning", "rysunek", "desenho", "tekening"],
      ],
    },
    revision: {
      own: ["revision", "rev", "rev letter"],
      besideOthers: [
        ...["revision no", "rev no"],
        ...["index", "indice", "revisione", "revisao", "revisie", "rewizja"],
      ],
    },
    date: {
      own: ["date", "date prepared"],
      besideOthers: ["date of revision", "revision date", "rev date"],
    },
  };
