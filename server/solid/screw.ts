/**
 * How far a screw reaches through a stack of boards that lie tight on each other, driven straight or at an
 * angle off square to them. Knows no edges: only depths. Millimetres and degrees.
 */
import { cos, degrees, NUMERIC, usable } from "./angle";

export interface Layer {
  readonly id: string;
  /** The thickness of wood there, square to the faces. */
  readonly depth: number;
}

export interface ScrewDrive {
  /** The whole screw, tip included. */
  readonly length: number;
  readonly angleOffSquare: number;
  /** From the head's side to the far side. */
  readonly layers: readonly Layer[];
  /** How deep the head sits below the first face, square to it; 0 (flush) when left out. */
  readonly sink?: number;
}

export interface Reach {
  readonly id: string;
  /** How much of the layer the screw passes, square to the faces; and its own length in there. */
  readonly depth: number;
  readonly along: number;
}

export interface DrivenScrew {
  readonly kind: "driven";
  readonly reach: readonly Reach[];
  readonly tip: {
    /** The layer the tip ends in, by its place in the stack. A tip just at a far face is still in that layer. */
    readonly in: number | "beyond";
    /** Below the first face, square to it. */
    readonly depth: number;
    /** Wood left between the tip and the far face of the stack; negative where the tip stands proud. */
    readonly woodOverTip: number;
  };
  /** The screw's length in the last layer, tip included; 0 when it does not get there. */
  readonly bite: number;
  /** The bite as a share of the screw's length. */
  readonly share: number;
}

export interface UndrivableScrew {
  readonly kind: "impossible";
  /** Not a usable number; no length; an angle below 0 or at 90 and more; no layers, or one without depth; a head sunk through the stack. */
  readonly reason: "number" | "length" | "angle" | "layers" | "sink";
}

/** The screw's path through the layers, or why there is none. Never throws. */
export function driveScrew(drive: ScrewDrive): DrivenScrew | UndrivableScrew {
  const { length, angleOffSquare, layers, sink = 0 } = drive;
  const stack = layers.reduce((sum, l) => sum + l.depth, 0);
  const fault = faultOf(drive, sink, stack);
  if (fault) return { kind: "impossible", reason: fault };
  const lean = cos(angleOffSquare);
  const tip = sink + length * lean;
  let top = 0;
  const reach = layers.map(({ id, depth }): Reach => {
    const bottom = top + depth;
    const passed = Math.max(0, Math.min(bottom, tip) - Math.max(top, sink));
    top = bottom;
    return { id, depth: passed, along: passed / lean };
  });
  const bite = reach.at(-1)?.along ?? 0;
  return {
    kind: "driven",
    reach,
    tip: { in: layerAt(tip, layers), depth: tip, woodOverTip: stack - tip },
    bite,
    share: bite / length,
  };
}

/**
 * The angle off square at which `margin` of wood stays over the tip of a screw driven flush; 0 when it does
 * so straight, undefined when no angle will, or an input is not a positive number (a margin may be 0).
 */
export function angleForMargin(length: number, stackDepth: number, margin: number): number | undefined {
  const deepest = longestStraight(stackDepth, margin);
  if (deepest === undefined || !(length > 0 && length < Number.POSITIVE_INFINITY)) return undefined;
  return length <= deepest ? 0 : degrees(Math.acos(deepest / length));
}

/** The longest screw that, driven straight and flush, leaves `margin` of wood over its tip; undefined when none can. */
export function longestStraight(stackDepth: number, margin: number): number | undefined {
  const deepest = stackDepth - margin;
  return margin >= 0 && deepest > 0 && Number.isFinite(deepest) ? deepest : undefined;
}

function faultOf(drive: ScrewDrive, sink: number, stack: number): UndrivableScrew["reason"] | undefined {
  const { length, angleOffSquare, layers } = drive;
  if (![length, angleOffSquare, sink, stack].every(usable)) return "number";
  if (length <= 0) return "length";
  if (angleOffSquare < 0 || angleOffSquare >= 90) return "angle";
  if (layers.length === 0 || layers.some((l) => l.depth <= 0)) return "layers";
  return sink < 0 || sink >= stack ? "sink" : undefined;
}

function layerAt(depth: number, layers: readonly Layer[]): number | "beyond" {
  let bottom = 0;
  for (const [i, layer] of layers.entries()) {
    bottom += layer.depth;
    if (depth <= bottom + NUMERIC) return i;
  }
  return "beyond";
}
