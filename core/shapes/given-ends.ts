import type { DimLetter, ShapeDefinition } from "../standards/port";

const BEND_AND_LEG = 2;
const without = new WeakMap<ShapeDefinition, Map<string, ShapeDefinition>>();

/**
 * A shape whose ends may lack, as the dims have it: without the end leg that is blank and its bend. A bar of which
 * both ends are blank would be straight: then the shape asks for them.
 *
 * @example
 * givenEnds(shape, [null, 900, 600]); // "A +90 B +90 C" is "B +90 C"
 */
export function givenEnds(shape: ShapeDefinition, isBlank: (letter: DimLetter) => boolean): ShapeDefinition {
  if (shape.endsMayLack !== true || shape.path === null) return shape;
  const parts = shape.path.split(" ");
  const [first, last] = [letterOf(parts[0]), letterOf(parts.at(-1))];
  const lacksFirst = isOptional(shape, first) && isBlank(first);
  const lacksLast = isOptional(shape, last) && isBlank(last);
  if (!lacksFirst && !lacksLast) return shape;
  const key = `${lacksFirst} ${lacksLast}`;
  const known = without.get(shape)?.get(key);
  if (known !== undefined) return known;
  const left = (path: string): string[] =>
    path.split(" ").slice(lacksFirst ? BEND_AND_LEG : 0, lacksLast ? -BEND_AND_LEG : undefined);
  const made =
    left(shape.path).length > 1
      ? trimmed(shape, (path) => left(path).join(" "))
      : asking(shape, [first, last]);
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
