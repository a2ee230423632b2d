// The case that the set-up walk adapts to, and what the target's page is asked to print.
import type { Rig } from '../../optics/bench.ts';
import type { SetUpCase } from '../../optics/setUp/step.ts';
import { drawTarget, UNLABELLED } from '../../optics/print/target.ts';
import { writeOrder } from '../../optics/print/order.ts';
import type { PaperName } from '../../optics/print/sheets.ts';
import { millimetres, type Steps } from '../../units.ts';
import type { Reckoned } from './reckon.ts';
import type { KitTraits, Picks } from './untyped.ts';

export const lampsOf = ({ lighting, mains }: Picks): Pick<SetUpCase, 'lighting' | 'mains'> => ({ lighting, mains: mains === '60' ? 60 : 50 });

export function caseOf(
  picks: Picks,
  traits: KitTraits,
  { unit, distance, reach, focalLength, converter }: Reckoned,
  { aperture }: Rig,
  start: Steps,
): SetUpCase {
  return {
    practice: false,
    version: picks.version,
    body: { stabiliser: traits.bodyStabiliser, liveView: traits.liveView, rearButton: traits.rearButton, manualAtBody: traits.manualAtBody },
    lens: { stabiliser: traits.lensStabiliser, zoom: traits.zoom, heavy: traits.heavy },
    converter,
    focalLength,
    aperture,
    distance: millimetres(distance - reach),
    measuredFrom: picks.from,
    unit,
    ...lampsOf(picks),
    squareBy: picks.squareBy,
    start,
  };
}

/** How large the corner marks' rectangle is drawn; a sheet's own where the target is not known yet. */
export function cornersOf({ bench }: Reckoned): { readonly width: number; readonly height: number } {
  return bench?.ok && bench.value.target.ok ? drawTarget(bench.value.target.value, UNLABELLED).corners : { width: 136, height: 180 };
}

/** The address of the page that prints the target for this rig. */
export function targetAddress(rig: Rig, { bench }: Reckoned, words: readonly string[], paper: PaperName): string | null {
  if (!bench?.ok) return null;
  return writeOrder({
    magnification: bench.value.magnification,
    pitch: rig.pitch,
    area: rig.area,
    sensor: rig.sensor,
    depth: bench.value.depth.total === 'infinite' ? null : bench.value.depth.total,
    words: [...words],
    paper,
  });
}
