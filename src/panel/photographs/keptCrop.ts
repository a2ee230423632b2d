// The crops that are kept beside what pictures showed: of each, the upright edge in its middle.
import type { Examples } from '../../photographs/series/examples.ts';
import type { BroughtPicture } from '../../platform/pictures/bridge.ts';
import type { CropPair } from '../../platform/keptCrops.ts';
import type { Picture } from './pictures.ts';

export const cropOfOne = ({ compared }: BroughtPicture): CropPair => ({ reference: null, shot: compared[0] ?? null });

export function cropsOfSeries(pictures: readonly Picture[], { reference, shot }: Examples): CropPair {
  const cropOf = (wanted: string | null): Blob | null => {
    const is = pictures.find(({ id }) => id === wanted)?.is;
    return is === undefined || typeof is === 'string' || !is.ok ? null : (is.value.compared[0] ?? null);
  };
  return { reference: cropOf(reference), shot: cropOf(shot) };
}
