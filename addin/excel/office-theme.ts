import { followSystemTheme } from "../pane/theme";

const MIDDLE = 0.5;

/** Tells whether Excel is dark, by the colour of its own panes; follows the system where Excel says none. */
export function followOfficeTheme(tell: (dark: boolean) => void): void {
  const background = Office.context.officeTheme?.bodyBackgroundColor;
  if (background === undefined || !/^#[0-9a-f]{6}/i.test(background)) followSystemTheme(tell);
  else tell(lightness(background) < MIDDLE);
}

/** Relative luminance as WCAG 2.1 defines it, without its gamma: enough to part dark from light. */
function lightness(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
  return (0.2126 * red + 0.7152 * green + 0.0722 * blue) / 255;
}
