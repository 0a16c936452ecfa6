import { webDarkTheme, webLightTheme } from "@fluentui/tokens";
import { setTheme } from "@fluentui/web-components";

/** Puts the pane and its controls in the light or the dark theme. */
export function applyTheme(pane: Element, dark: boolean): void {
  setTheme(dark ? webDarkTheme : webLightTheme);
  pane.toggleAttribute("dark", dark);
}

/** Follows what the system asks for; tells each time, and at once. */
export function followSystemTheme(tell: (dark: boolean) => void): void {
  const query = matchMedia("(prefers-color-scheme: dark)");
  query.addEventListener("change", ({ matches }) => tell(matches));
  tell(query.matches);
}
