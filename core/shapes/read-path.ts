import type { Hook, HookTurn, Standard, Use } from "../standards/port";
import { parseLength } from "../units/parse-length";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { setBack } from "./centre-line";
import type { Leg, PlanarPath, Turn } from "./path";

export interface PathQuestion {
  readonly standard: Standard;
  /** mm */
  readonly diameter: number;
  readonly use: Use;
  readonly grade: string | undefined;
  /** the former was given with the bar: hooks are bent about it, not about the standard's */
  readonly formerGiven: boolean;
  /** mm, inside: half the former in force */
  readonly radius: number;
}

const FORM = `legs and turns alternating, parted by spaces, such as "500 +90 1200 -45 300"`;
const pathPartUnread = defineRefusal(
  "path-part-unread",
  "value",
  `"{part}" of the path "{path}" is no {wanted}: {form}`,
);
const pathNeedsLeg = defineRefusal(
  "path-needs-leg",
  "value",
  `the path "{path}" has no leg {place}: write ${FORM}`,
);
const pathNeedsTurn = defineRefusal(
  "path-needs-turn",
  "value",
  `the path "{path}" has no turn between "{before}" and "{after}": write ${FORM}`,
);
const pathWithoutTurn = defineRefusal(
  "path-without-turn",
  "value",
  `the path "{path}" has no turn and no hook: a straight bar is code 00 with its length as A`,
);
const turnOutOfRange = defineRefusal(
  "turn-out-of-range",
  "value",
  `turn "{part}" of the path "{path}" is {angle} degrees: a turn is over 0 and at most 180`,
);
const radiusNotPositive = defineRefusal(
  "turn-radius-not-positive",
  "value",
  `turn "{part}" of the path "{path}" has an inside radius of 0: give one over 0 or leave it out for half the former`,
);
const legNotPositive = defineRefusal(
  "leg-not-positive",
  "value",
  `leg "{part}" of the path "{path}" must be over 0`,
);
const twoFreeLegs = defineRefusal(
  "two-free-legs",
  "value",
  `the path "{path}" has {count} legs in parentheses: one leg may take up tolerance`,
);
const hookInside = defineRefusal(
  "hook-inside",
  "value",
  `"{part}" stands inside the path "{path}": an end hook is its first or last part`,
);
const hookUnknown = defineRefusal(
  "hook-unknown",
  "value",
  `"{part}" of the path "{path}" is no end hook: write hook90, hook135 or hook180, with - before it for the other sense`,
);

const HOOK = /^([+-])?hook(\d*)$/i;
const TURN = /^([+-])(\d+(?:\.\d+)?|\.\d+)(?:r(.+))?$/i;
const HOOK_TURNS: readonly string[] = ["90", "135", "180"];

/**
 * A typed path as legs and turns, hooks made into both: "500 +90 1200 -45 300", "hook135 400 +90r60 (300)".
 * Legs are outside dimensions, numbers in the standard's unit or with a unit of their own. One leg may
 * stand in parentheses and is free, else the last one is. Refuses each part that is malformed, by its text.
 */
export function readPath(text: string, question: PathQuestion): PlanarPath | Refusal {
  const parts = text.trim().split(/\s+/);
  const startHook = hookAt(parts, 0, text, question);
  if (isRefusal(startHook)) return startHook;
  const endHook = parts.length > 1 ? hookAt(parts, parts.length - 1, text, question) : null;
  if (isRefusal(endHook)) return endHook;
  const body = parts.slice(startHook === null ? 0 : 1, endHook === null ? parts.length : -1);
  const read = readBody(body, text, question);
  if (isRefusal(read)) return read;
  const { legs, turns } = read;
  if (startHook !== null) {
    legs.unshift(startHook.leg);
    turns.unshift(startHook.turn);
  }
  if (endHook !== null) {
    legs.push(endHook.leg);
    turns.push(endHook.turn);
  }
  if (turns.length === 0) return pathWithoutTurn({ path: text });
  return markFree(legs, turns, text);
}

interface HookEnd {
  readonly leg: Leg;
  readonly turn: Turn;
}

function hookAt(
  parts: readonly string[],
  at: number,
  path: string,
  question: PathQuestion,
): HookEnd | null | Refusal {
  const part = parts[at]!;
  const match = HOOK.exec(part);
  if (match === null) return null;
  if (!HOOK_TURNS.includes(match[2]!)) return hookUnknown({ part, path });
  const { standard, diameter, use, grade } = question;
  const turn = Number(match[2]) as HookTurn;
  const { formerGiven, radius } = question;
  const hook = standard.hook(turn, diameter, use, grade, ...(formerGiven ? [2 * radius] : []));
  if (isRefusal(hook)) return hook;
  return hookEnd(hook.value, match[1] === "-" ? -1 : 1, question);
}

/** The straight after the bend becomes an outside dimension by the set-back of its own turn. */
function hookEnd(hook: Hook, sense: 1 | -1, question: PathQuestion): HookEnd {
  const radius = question.formerGiven ? question.radius : hook.former / 2;
  const length = hook.extension + setBack(hook.turn, radius, question.diameter);
  return {
    leg: { length, free: false, letter: null, hook },
    turn: { angle: sense * hook.turn, radius: question.formerGiven ? null : radius },
  };
}

interface Body {
  readonly legs: Leg[];
  readonly turns: Turn[];
}

function readBody(parts: readonly string[], path: string, question: PathQuestion): Body | Refusal {
  const legs: Leg[] = [];
  const turns: Turn[] = [];
  for (let at = 0; at < parts.length; at += 1) {
    const part = parts[at]!;
    if (HOOK.test(part)) return hookInside({ part, path });
    const isTurn = /^[+-]/.test(part);
    const wantsTurn = at % 2 === 1;
    if (isTurn && !wantsTurn) return pathNeedsLeg({ path, place: `before "${part}"` });
    if (!isTurn && wantsTurn) return pathNeedsTurn({ path, before: parts[at - 1]!, after: part });
    const read = isTurn ? readTurn(part, path, question) : readLeg(part, path, question);
    if (isRefusal(read)) return read;
    if ("angle" in read) turns.push(read);
    else legs.push(read);
  }
  if (legs.length === turns.length) {
    const last = parts[parts.length - 1];
    return pathNeedsLeg({ path, place: last === undefined ? "between its hooks" : `after "${last}"` });
  }
  return { legs, turns };
}

function readLeg(part: string, path: string, { standard }: PathQuestion): Leg | Refusal {
  const inside = /^\((.*)\)$/.exec(part);
  const length = parseLength(inside?.[1] ?? part, standard.unit);
  if (isRefusal(length)) return pathPartUnread({ part, path, wanted: "leg", form: `write ${FORM}` });
  if (length === 0) return legNotPositive({ part, path });
  return { length, free: inside !== null, letter: null };
}

function readTurn(part: string, path: string, { standard }: PathQuestion): Turn | Refusal {
  const [, sign, degrees, radiusText] = TURN.exec(part) ?? [];
  if (degrees === undefined) {
    return pathPartUnread({
      part,
      path,
      wanted: "turn",
      form: "write + or - and degrees, and an inside radius after r if it has its own, such as +90r60",
    });
  }
  const angle = Number(degrees);
  if (angle <= 0 || angle > 180) return turnOutOfRange({ part, path, angle });
  const radius = radiusText === undefined ? null : parseLength(radiusText, standard.unit);
  if (isRefusal(radius))
    return pathPartUnread({
      part,
      path,
      wanted: "turn",
      form: "write its inside radius as a length over 0 after r, such as +90r60",
    });
  if (radius === 0) return radiusNotPositive({ part, path });
  return { angle: sign === "-" ? -angle : angle, radius };
}

function markFree(legs: readonly Leg[], turns: readonly Turn[], path: string): PlanarPath | Refusal {
  const count = legs.filter((leg) => leg.free).length;
  if (count > 1) return twoFreeLegs({ path, count });
  const lastOwn = legs.map((leg) => leg.hook === undefined).lastIndexOf(true);
  const marked =
    count === 1 ? legs : legs.map((leg, index) => (index === lastOwn ? { ...leg, free: true } : leg));
  return { kind: "planar", legs: marked, turns, inOnePlane: true };
}
