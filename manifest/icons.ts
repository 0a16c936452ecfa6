import { fileURLToPath } from "node:url";

/** Sizes in pixels that Excel asks for, and the two of the unified manifest. */
export const ICON_SIZES = [16, 32, 64, 80, 128, 192] as const;
export const OUTLINE_SIZE = 32;

export const iconName = (size: number): string => `bar-${size}.png`;
export const OUTLINE_NAME = "bar-outline-32.png";

export const ICON_FILES: readonly string[] = [...ICON_SIZES.map(iconName), OUTLINE_NAME];

/** Where an icon stands in the project; `draw-icons.ts` renders them from the SVG beside them. */
export function iconFile(name: string): string {
  return fileURLToPath(new URL(`./icons/${name}`, import.meta.url));
}
