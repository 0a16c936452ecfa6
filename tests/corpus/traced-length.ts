/** A flat bar by its outside legs and signed right angles, mm. */
export interface TracedBar {
  readonly diameter: number;
  /** inside radius of every bend */
  readonly radius: number;
  /** to the meeting of the outside tangents */
  readonly legs: readonly number[];
  /** +1 or -1 at each right angle between two legs */
  readonly senses: readonly (1 | -1)[];
}

const CHORDS = 400;

/**
 * mm along the centre line, measured step by step on a polyline that is walked from one end to the
 * other: a check that shares neither formula nor code with core. Right angles only.
 */
export function tracedLength({ diameter, radius, legs, senses }: TracedBar): number {
  const bend = radius + diameter / 2;
  const half = diameter / 2;
  let x = 0;
  let y = 0;
  let heading = 0;
  let length = 0;
  const go = (step: number): void => {
    const [fromX, fromY] = [x, y];
    x += step * Math.cos(heading);
    y += step * Math.sin(heading);
    length += Math.hypot(x - fromX, y - fromY);
  };
  legs.forEach((leg, at) => {
    const bendsBeside = (at > 0 ? 1 : 0) + (at < legs.length - 1 ? 1 : 0);
    const straight = leg - bendsBeside * (half + bend);
    if (straight < 0) throw new RangeError(`leg ${leg} has no straight left`);
    go(straight);
    const sense = senses[at];
    if (sense === undefined) return;
    const turn = (sense * Math.PI) / 2 / CHORDS;
    for (let chord = 0; chord < CHORDS; chord += 1) {
      heading += turn / 2;
      go(2 * bend * Math.sin(Math.abs(turn) / 2));
      heading += turn / 2;
    }
  });
  return length;
}
