import type { DimLetter, ShapeDefinition } from "../standards/port";

const BEND_AND_LEG = 2;
const without = new WeakMap<ShapeDefinition, Map<string, ShapeDefinition>>();

/**
 * A shape whose ends may lack, as the dims have it: without the end legs that are blank and their bends. A bar of which
 * both ends are blank would be straight: then the shape asks for them.
 *
 * @example
 * givenEnds(shape, [null, 900, 600]); // "A +90 B +90 C" is "B +90 C"
 */
export function givenEnds(shape: ShapeDefinition, isBlank: (letter: DimLetter) => boolean): ShapeDefinition {
  if (shape.endsMayLack !== true || shape.path === null) return shape;
  const parts = shape.path.split(" ");
  const lacks = (part: string | undefined): boolean => {
    const letter = letterOf(part);
    return isOptional(shape, letter) && isBlank(letter);
  };
  let [from, to] = [0, parts.length];
  while (to - from > 1 && lacks(parts[to - 1])) to -= BEND_AND_LEG;
  while (to - from > 1 && lacks(parts[from])) from += BEND_AND_LEG;
  if (from === 0 && to === parts.length) return shape;
  const key = `${from} ${to}`;
  const known = without.get(shape)?.get(key);
  if (known !== undefined) return known;
  const made =
    to - from > 1
      ? trimmed(shape, (path) => path.split(" ").slice(from, to).join(" "))
      : asking(shape, [letterOf(parts[0]), letterOf(parts.at(-1))]);
  without.set(shape, (without.get(shape) ?? new Map<string, ShapeDefinition>()).set(key, made));
  return made;
}

/** The other reading has the same ends. */
function trimmed(shape: ShapeDefinition, trim: (path: string) => string): ShapeDefinition {
  const { path, otherReading: other } = shape;
  return {
    ...shape,
    path: path === null ? null : trim(path),
    ...(other === undefined ? {} : { otherReading: { ...other, path: trim(other.path) } }),
  };
}

function asking(shape: ShapeDefinition, ends: readonly DimLetter[]): ShapeDefinition {
  return { ...shape, optionalDims: (shape.optionalDims ?? []).filter((letter) => !ends.includes(letter)) };
}

/** "A" of "A", of "(A)" and of "hA". */
function letterOf(leg = ""): DimLetter {
  return /[A-HJK]/.exec(leg)?.[0] as DimLetter;
}

function isOptional({ optionalDims }: ShapeDefinition, letter: DimLetter): boolean {
  return optionalDims?.includes(letter) === true;
}
