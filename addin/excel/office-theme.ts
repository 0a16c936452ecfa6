import { followSystemTheme } from "../pane/theme";

const MIDDLE = 0.5;

/** Tells whether Excel is dark, by the colour of its own panes; follows the system where Excel says none. */
export function followOfficeTheme(tell: (dark: boolean) => void): void {
  const background = paneColour();
  if (background === null) followSystemTheme(tell);
  else tell(lightness(background) < MIDDLE);
}

/** Versions of Excel without themes throw where others answer. */
function paneColour(): string | null {
  try {
    const { bodyBackgroundColor } = Office.context.officeTheme;
    return /^#[0-9a-f]{6}$/i.test(bodyBackgroundColor) ? bodyBackgroundColor : null;
  } catch {
    return null;
  }
}

/** Relative luminance as WCAG 2.1 defines it, without its gamma: enough to part dark from light. */
function lightness(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
  return (0.2126 * red + 0.7152 * green + 0.0722 * blue) / 255;
}
