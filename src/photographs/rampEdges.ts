// The ramp's edges as they lie in a picture, once it is known where each of its points comes out and how deep it stands.
import type { Point } from '../optics/print/drawing.ts';
import type { RampLayout } from '../optics/print/rampLayout.ts';
import { textureEdges } from '../optics/print/rampTexture.ts';
import type { FollowedEdge } from './followedEdge.ts';

/** From millimetres of the ramp's page to pixels, and to millimetres of depth behind the target along the optical axis. */
export type PlaceOnRamp = (point: Point) => Point & { readonly depth: number };

export function rampEdges(layout: RampLayout, place: PlaceOnRamp): FollowedEdge[] {
  const edges = textureEdges(layout);
  return edges.map((edge): FollowedEdge => {
    const { from, to } = edge;
    const [start, end] = [place(from), place(to)];
    const next = Math.min(OUTSIDE, ...edges.flatMap((other) => (other !== edge && other.from.y === from.y ? Math.abs(other.from.x - from.x) : [])));
    const beside = place({ x: from.x + next, y: from.y });
    return { from: start, to: end, depthFrom: start.depth, depthTo: end.depth, room: Math.hypot(beside.x - start.x, beside.y - start.y) };
  });
}

/** White beside the outermost edges, up to the numbered lines, in millimetres. */
const OUTSIDE = 4;
