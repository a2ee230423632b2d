// An edge of the ramp as it lies in the picture, along which sharpness is followed: it may run through the depth, or stand at one.
import type { Point } from '../optics/print/drawing.ts';
import { edgeBlur, type EdgeBlur } from './edgeBlur.ts';
import type { Plane } from './plane.ts';

export interface FollowedEdge {
  /** Pixels. */
  readonly from: Point;
  readonly to: Point;
  /** Depth along the optical axis at both ends, in millimetres from the middle of the target; positive is behind it. */
  readonly depthFrom: number;
  readonly depthTo: number;
  /** Pixels to the nearest other edge. */
  readonly room: number;
}

export interface RampReading extends EdgeBlur {
  readonly depth: number;
  /** How the edge runs in the picture. */
  readonly runs: 'upright' | 'level';
}

/** Pieces of an edge are about so long, in pixels: the blur hardly changes, and noise averages out. */
const PIECE = 16;

/** What the pieces of one edge read; null for each where no edge was to be seen. `distance` in millimetres from the lens to the target. */
export function readAlong(plane: Plane, edge: FollowedEdge, distance: number): (RampReading | null)[] {
  const [x, y] = [edge.to.x - edge.from.x, edge.to.y - edge.from.y];
  const length = Math.hypot(x, y);
  const count = Math.max(1, Math.round(length / PIECE));
  const along = { x: x / length, y: y / length };
  const runs = Math.abs(y) > Math.abs(x) ? 'upright' : 'level';
  return Array.from({ length: count }, (_, index) => {
    const share = (index + 0.5) / count;
    const middle = { x: edge.from.x + share * x, y: edge.from.y + share * y };
    const blur = edgeBlur(plane, { middle, along, halfLength: length / count / 2, room: edge.room });
    return blur === null ? null : { ...blur, runs, depth: depthAlong(edge, share, distance) };
  });
}

/** Along a line in a picture it is one over the distance from the lens that changes evenly. */
function depthAlong({ depthFrom, depthTo }: FollowedEdge, share: number, distance: number): number {
  const [near, far] = [1 / (distance + depthFrom), 1 / (distance + depthTo)];
  return 1 / (near + share * (far - near)) - distance;
}
