/** In force where neither the call nor the workbook names a standard. */
const FALLBACK = "BS8666:2005";
/** ms; one recalculation of any number of cells reads the workbook once */
const FRESH = 1_000;

type Reader = () => Promise<string | null>;

let begin: (reader: Reader) => void = () => undefined;
/** Excel may call before the page has said where to look: such calls wait. */
let reader = new Promise<Reader>((resolve) => {
  begin = resolve;
});
let known: { readonly standard: Promise<string>; readonly until: number } | null = null;

/** Tells the functions where the workbook keeps its standard. */
export function readDefaultStandardBy(read: Reader): void {
  begin(read);
  reader = Promise.resolve(read);
  known = null;
}

/** The workbook has another standard now. */
export function forgetDefaultStandard(): void {
  known = null;
}

/** Id or alias of the standard for arguments left out. Rejects where the workbook's name holds no text. */
export function defaultStandard(now = Date.now()): Promise<string> {
  if (known === null || now > known.until) {
    const standard = reader.then((read) => read()).then((own) => own ?? FALLBACK);
    known = { standard, until: now + FRESH };
  }
  return known.standard;
}
