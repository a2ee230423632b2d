// What of a photograph fits which field of the kit. Every field is offered on its own, and nothing is taken unasked.
import type { Millimetres } from '../../units.ts';
import type { Body, Kit, Lens } from '../kit.ts';
import type { FocalRange } from '../lens.ts';
import type { Photograph } from './photograph.ts';

export type Offer =
  | { readonly to: 'body'; readonly field: 'model' | 'serial'; readonly value: string }
  | { readonly to: 'lens'; readonly field: 'model' | 'serial'; readonly value: string }
  | { readonly to: 'lens'; readonly field: 'focal'; readonly value: FocalRange }
  | { readonly to: 'lens'; readonly field: 'widest'; readonly value: { readonly from: number; readonly to: number } }
  | { readonly to: 'situation'; readonly field: 'focalLength' | 'distance'; readonly value: Millimetres };

/** The fields a photograph can fill, in the order they are shown. */
export function offersOf(photograph: Photograph): Offer[] {
  const { bodyModel, bodySerial, lensModel, lensSerial, lensFocal, lensWidest, focalLength, distance } = photograph;
  const offers: (Offer | null)[] = [
    bodyModel === null ? null : { to: 'body', field: 'model', value: bodyModel },
    bodySerial === null ? null : { to: 'body', field: 'serial', value: bodySerial },
    lensModel === null ? null : { to: 'lens', field: 'model', value: lensModel },
    lensSerial === null ? null : { to: 'lens', field: 'serial', value: lensSerial },
    lensFocal === null ? null : { to: 'lens', field: 'focal', value: lensFocal },
    lensWidest === null ? null : { to: 'lens', field: 'widest', value: lensWidest },
    focalLength === null ? null : { to: 'situation', field: 'focalLength', value: focalLength },
    distance === null ? null : { to: 'situation', field: 'distance', value: distance },
  ];
  return offers.filter((offer) => offer !== null);
}

/**
 * The body and lens of the kit that took it: by serial; by model where only one has it and no serial says otherwise.
 */
export function takenWith(photograph: Photograph, kit: Kit): { readonly body: Body | null; readonly lens: Lens | null } {
  return {
    body: theOne(kit.bodies, photograph.bodyModel, photograph.bodySerial),
    lens: theOne(kit.lenses, photograph.lensModel, photograph.lensSerial),
  };
}

function theOne<Item extends { model: string | null; serial: string | null }>(
  items: readonly Item[],
  model: string | null,
  serial: string | null,
): Item | null {
  const same = items.filter((item) => model !== null && item.model === model);
  const bySerial = serial === null ? [] : items.filter((item) => item.serial === serial && (item.model === null || item.model === model));
  if (bySerial.length === 1) return bySerial[0] ?? null;
  const open = same.filter((item) => serial === null || item.serial === null);
  return open.length === 1 && same.length === 1 ? (open[0] ?? null) : null;
}
