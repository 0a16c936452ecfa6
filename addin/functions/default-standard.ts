import { readOnce } from "./read-once";

/** In force where neither the call nor the workbook names a standard. */
const FALLBACK = "BS8666:2005";

type Reader = () => Promise<string | null>;

let begin: (reader: Reader) => void = () => undefined;
/** Excel may call before the page has said where to look: such calls wait. */
const first = new Promise<Reader>((resolve) => {
  begin = resolve;
});
const standard = readOnce(() => first.then((read) => read()));

/** Tells the functions where the workbook keeps its standard. */
export function readDefaultStandardBy(read: Reader): void {
  begin(read);
  standard.readBy(read);
}

/** The workbook has another standard now. */
export function forgetDefaultStandard(): void {
  standard.forget();
}

/** Id or alias of the standard for arguments left out. Rejects where the workbook's name holds no text. */
export async function defaultStandard(): Promise<string> {
  return (await standard.known()) ?? FALLBACK;
}
