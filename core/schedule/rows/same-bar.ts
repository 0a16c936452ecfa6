import type { BarRow } from "../bar-row";
import { isRare, rareOf } from "./stored-bar";

/** True where all that was read of two bars is alike, but the table that they stand in. */
export function isSameBar(one: BarRow, other: BarRow): boolean {
  if (one === other) return true;
  return hasSameWords(one, other) && hasSameFigures(one, other) && hasSameRest(one, other);
}

// field by field: copies of ten thousand bars to be compared cost seconds
function hasSameWords(one: BarRow, other: BarRow): boolean {
  return (
    one.mark === other.mark &&
    one.member === other.member &&
    one.sizeTyped === other.sizeTyped &&
    one.shape === other.shape &&
    one.grade === other.grade &&
    one.pour === other.pour &&
    one.revision === other.revision &&
    one.remark === other.remark
  );
}

function hasSameFigures(one: BarRow, other: BarRow): boolean {
  return (
    one.row === other.row &&
    one.members === other.members &&
    one.each === other.each &&
    one.total === other.total &&
    one.length === other.length &&
    one.mass === other.mass &&
    one.former === other.former &&
    one.radius === other.radius &&
    (one.totalLength ?? null) === (other.totalLength ?? null)
  );
}

function hasSameRest(one: BarRow, other: BarRow): boolean {
  const [dims, others] = [one.dims, other.dims];
  if (dims.length !== others.length || !dims.every((dim, place) => dim === others[place])) return false;
  if (!isAlike(one.size, other.size) || !isAlike(one.remarks ?? null, other.remarks ?? null)) return false;
  const [isOneRare, isOtherRare] = [isRare(one), isRare(other)];
  return isOneRare === isOtherRare && (!isOneRare || isAlike(rareOf(one), rareOf(other)));
}

function isAlike(one: object | null, other: object | null): boolean {
  if (one === other) return true;
  if (one === null || other === null) return false;
  // bars of one reading share the few objects there are
  if (knownAlike.get(one) === other) return true;
  const isSame = JSON.stringify(one) === JSON.stringify(other);
  if (isSame) knownAlike.set(one, other);
  return isSame;
}

const knownAlike = new WeakMap<object, object>();
