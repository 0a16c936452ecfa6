/**
 * In place of what the grid would part words and read font files with: no cell asks for either. A text is of
 * no known language, for which the grid has no hyphens.
 */
export const franc = () => "und";

/** Asked only where a page may list the machine's fonts, for which this page never asks. */
export const parse = () => null;
