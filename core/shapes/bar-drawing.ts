import { type Box, boxOfPoints } from "../geometry/box";
import type { Point } from "../geometry/point";
import { type BarOutline, shortNumber, type WriteLength } from "./bar-outline";
import type { BarSize } from "./centre-line";
import { arcOutline, circleOutline, helixOutline } from "./curved-outline";
import { isometricOutline } from "./isometric-outline";
import type { BarPath } from "./path";
import { type LabelWish, type PlacedLabel, placeLabels } from "./place-labels";
import { planarOutline } from "./planar-outline";

export interface BarDrawingInput extends BarSize {
  readonly path: BarPath;
  /** how a length is worded; millimetres with at most one decimal unless given */
  readonly write?: WriteLength;
  /** further lines under the drawing, such as a height that is no leg: "D 300" */
  readonly notes?: readonly string[];
  /** in a small frame the lines stand beside the drawing: they are answered, and take no room in it */
  readonly hasNotesApart?: boolean;
  /** the room the drawing may take, in the unit of the page; 360 x 220 unless given */
  readonly frame?: { readonly width: number; readonly height: number };
}

/** A bar ready to be painted: every coordinate in the frame's unit, y downwards. */
export interface BarDrawing {
  /** what the drawing takes of the frame it was given */
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly (readonly Point[])[];
  readonly breaks: readonly { readonly at: Point; readonly heading: number }[];
  readonly barWidth: number;
  readonly textHeight: number;
  readonly labels: readonly PlacedLabel[];
  /** lines under the drawing: radius, angles, and texts that found no room beside the bar */
  readonly notes: readonly { readonly text: string; readonly box: Box }[];
  /** the lines that were to stand apart */
  readonly apart: readonly string[];
  /** why it is not to scale; null where it is */
  readonly schematic: string | null;
  /** frame units per millimetre */
  readonly scale: number;
}

const FRAME = { width: 360, height: 220 };
const FONT_SIZE = 11;
const LINE_HEIGHT = 14;
/** Wider than any digit of a usual sans serif face, so that a box is never narrower than its text. */
const CHARACTER_WIDTH = FONT_SIZE * 0.62;
const LEAST_BAR_WIDTH = 3;
/** A short thick bar need not fill the frame. */
const WIDEST_BAR = 9;
const GAP = 2.5;
const EDGE = 3;

/**
 * A bar drawn to scale with the texts of its legs, bends and radius. Texts touch neither the bar nor
 * one another; one that finds no room goes under the drawing. Helices and bars of more than one plane
 * are schematic and say so; a leg far longer than the shortest is drawn broken and says so.
 *
 * @example
 * barSvg(barDrawing({ path, diameter: 16, radius: 32 }), { width: 360, height: 220, title: "mark 01" });
 */
export function barDrawing(input: BarDrawingInput): BarDrawing {
  const outline = outlineOf(input);
  const frame = input.frame ?? FRAME;
  const said = [...outline.notes, ...(input.notes ?? [])];
  if (outline.schematic !== null) said.push(outline.schematic);
  const lines = input.hasNotesApart === true ? [] : said;
  const widest = Math.max(0, ...outline.anchors.map((anchor) => textWidth(anchor.text)));
  const drawn = fitOutline(outline, input.diameter, {
    width: frame.width - 2 * (Math.min(widest, frame.width / 4) + 2 * GAP + EDGE),
    height: Math.max(
      LINE_HEIGHT,
      frame.height - lines.length * LINE_HEIGHT - 2 * (LINE_HEIGHT + 2 * GAP + EDGE),
    ),
    middle: frame.width / 2,
  });
  const wishes: LabelWish[] = outline.anchors.map((anchor) => ({
    text: anchor.text,
    width: textWidth(anchor.text),
    from: drawn.place(anchor.from),
    to: drawn.place(anchor.to),
  }));
  const placed = placeLabels(wishes, {
    frame: {
      x: EDGE,
      y: EDGE,
      width: frame.width - 2 * EDGE,
      height: frame.height - lines.length * LINE_HEIGHT - 2 * EDGE,
    },
    strokes: drawn.strokes,
    barWidth: drawn.barWidth,
    textHeight: LINE_HEIGHT,
    gap: GAP,
  });
  const homeless = wishes.filter((_, index) => placed[index] === null).map((wish) => wish.text);
  return closeUp({
    ...drawn,
    width: frame.width,
    textHeight: LINE_HEIGHT,
    labels: placed.filter((label) => label !== null),
    lines: wrapped([...lines, ...homeless], frame.width - 2 * EDGE),
    apart: input.hasNotesApart === true ? said : [],
    schematic: outline.schematic,
  });
}

function outlineOf(input: BarDrawingInput): BarOutline {
  const write = input.write ?? shortNumber;
  switch (input.path.kind) {
    case "planar":
      return input.path.inOnePlane
        ? planarOutline(input.path, input, write)
        : isometricOutline(input.path, input, write);
    case "arc":
      return arcOutline(input.path, input, write);
    case "circle":
      return circleOutline(input.path, input, write);
    case "helix":
      return helixOutline(input.path, input, write);
  }
}

interface Room {
  readonly width: number;
  readonly height: number;
  readonly middle: number;
}

function fitOutline(outline: BarOutline, diameter: number, room: Room) {
  const box = boxOfPoints(outline.strokes.flat());
  const scale = Math.min(
    room.width / Math.max(box.width + diameter, 1),
    room.height / Math.max(box.height + diameter, 1),
    WIDEST_BAR / diameter,
  );
  const top = EDGE + LINE_HEIGHT + 2 * GAP;
  const barWidth = Math.max(LEAST_BAR_WIDTH, diameter * scale);
  const place = (point: Point): Point => ({
    x: room.middle + (point.x - box.x - box.width / 2) * scale,
    y: top + barWidth / 2 + (box.y + box.height - point.y) * scale,
  });
  const strokes = outline.strokes.map((stroke) => stroke.map(place));
  const breaks = outline.breaks.map(({ at, heading }) => ({ at: place(at), heading: -heading }));
  return { strokes, breaks, barWidth, scale, place };
}

type Open = Omit<BarDrawing, "height" | "notes"> & { readonly lines: readonly string[] };

/** Moves everything up to the top edge and sets the notes right under the lowest thing drawn. */
function closeUp(open: Open): BarDrawing {
  const { strokes, breaks, barWidth, textHeight, labels, apart, schematic, scale, width } = open;
  const bar = boxOfPoints(strokes.flat());
  const top = Math.min(bar.y - barWidth / 2, ...labels.map((label) => label.box.y)) - EDGE;
  const low =
    Math.max(bar.y + bar.height + barWidth / 2, ...labels.map((label) => label.box.y + label.box.height)) -
    top;
  const up = (point: Point): Point => ({ x: point.x, y: point.y - top });
  const notes = open.lines.map((text, line) => ({
    text,
    box: { x: EDGE, y: low + GAP + line * LINE_HEIGHT, width: textWidth(text), height: LINE_HEIGHT },
  }));
  return {
    width,
    height: low + GAP + notes.length * LINE_HEIGHT + EDGE,
    strokes: strokes.map((stroke) => stroke.map(up)),
    breaks: breaks.map(({ at, heading }) => ({ at: up(at), heading })),
    barWidth,
    textHeight,
    labels: labels.map(({ text, box, leader }) => ({
      text,
      box: { ...box, y: box.y - top },
      leader: leader === null ? null : { from: up(leader.from), to: up(leader.to) },
    })),
    notes,
    apart,
    schematic,
    scale,
  };
}

function textWidth(text: string): number {
  return text.length * CHARACTER_WIDTH;
}

/** Lines no wider than the frame, broken at spaces. */
function wrapped(texts: readonly string[], width: number): string[] {
  const most = Math.max(8, Math.floor(width / CHARACTER_WIDTH));
  return texts.flatMap((text) => {
    const lines: string[] = [];
    let line = "";
    for (const word of text.split(" ")) {
      if (line !== "" && line.length + 1 + word.length > most) {
        lines.push(line);
        line = word;
      } else {
        line = line === "" ? word : `${line} ${word}`;
      }
    }
    return [...lines, line];
  });
}
