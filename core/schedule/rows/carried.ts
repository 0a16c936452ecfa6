/** What carries over to a row from the rows above. */
export interface Carried {
  readonly member: string | null;
  /** the member that a sub-header row named */
  readonly heading: string | null;
  /** number of members that a sub-header row gave */
  readonly members: number | null;
  /** typed beside the carried member */
  readonly membersTyped: number | null;
  readonly grade: string | null;
  /** the bar size that a sub-header row named, where no column does */
  readonly size: string | null;
}

/** Nothing but the grade that the user gave to bars that name none. */
export function nothingCarried(grade: string | null): Carried {
  return { member: null, heading: null, members: null, membersTyped: null, grade, size: null };
}

export function isSameCarried(a: Carried, b: Carried): boolean {
  return (
    a.member === b.member &&
    a.heading === b.heading &&
    a.members === b.members &&
    a.membersTyped === b.membersTyped &&
    a.grade === b.grade &&
    a.size === b.size
  );
}
