/** True for a file of separated values by its name, which is no workbook that was only called so. */
export function isSeparatedText(bytes: Uint8Array, name: string): boolean {
  const isZip = bytes[0] === 0x50 && bytes[1] === 0x4b;
  return /\.(csv|tsv|txt)$/i.test(name) && !isZip;
}
