// The last values as they travel between a person's computers through the browser's own sync, which is small: 8,192
// bytes an item (its key included), 102,400 in all. Each computer writes only under its own name, so that no computer
// can overwrite another; whoever reads joins them all.
import type { Steps } from '../../units.ts';
import type { Shelved } from '../shelf.ts';

export const ITEM_BYTES = 8192;
export const ALL_BYTES = 102_400;
/** Left free, because browsers count a little differently. */
const SPARE = 256;

/** One last value: id, value, moment, kind, and whose it is. Short, because room is short. */
type PackedValue = readonly [
  id: string,
  value: Steps,
  at: number,
  kind: 'e' | 'm',
  situation: string,
  body: string,
  lens: string,
  focalLength: number,
  distance: number,
];

export interface Packed {
  /** Items to write; a key of this computer that is not among them is to be removed. */
  readonly items: Readonly<Record<string, readonly PackedValue[]>>;
  /** Values that found no room: the oldest. */
  readonly leftOut: number;
}

export const ALL_KEYS = 'values/';
export const ownKeys = (computer: string): string => `${ALL_KEYS}${computer}/`;
const keyOf = (computer: string, index: number): string => `${ownKeys(computer)}${index}`;

/** Packs the newest values first into what the other computers leave of the room; `synced`: all that sync holds now. */
export function pack(computer: string, shelf: readonly Shelved[], synced: Readonly<Record<string, unknown>>): Packed {
  const others = Object.entries(synced).filter(([key]) => !key.startsWith(ownKeys(computer)));
  const there = new Set(others.flatMap(([, list]) => (Array.isArray(list) ? list : [])).map((value: unknown) => (Array.isArray(value) ? value[0] : null)));
  const usedByOthers = others.reduce((sum, [key, list]) => sum + bytesOf(key) + bytesOf(JSON.stringify(list) ?? ''), 0);
  const values = shelf
    .flatMap((shelved) => valuesOf(shelved))
    .filter(([id]) => !there.has(id))
    .sort((a, b) => b[2] - a[2] || (a[0] < b[0] ? -1 : 1));
  const items: Record<string, PackedValue[]> = {};
  let room = ALL_BYTES - SPARE - usedByOthers;
  let index = -1;
  let inItem = Infinity;
  let packed = 0;
  for (const value of values) {
    const size = bytesOf(JSON.stringify(value)) + 1;
    const opens = inItem + size > ITEM_BYTES - SPARE;
    const cost = size + (opens ? keyOf(computer, index + 1).length + 2 : 0);
    if (cost > room || size > ITEM_BYTES - 2 * SPARE) break;
    if (opens) {
      index++;
      inItem = cost;
    } else inItem += cost;
    const key = keyOf(computer, index);
    items[key] = [...(items[key] ?? []), value];
    room -= cost;
    packed++;
  }
  return { items, leftOut: values.length - packed };
}

/** Entered and measured both, where they differ: neither may hide the other. */
function valuesOf({ subject, entered, measured, state }: Shelved): PackedValue[] {
  const place = [subject.situation, subject.body, subject.lens, subject.focalLength, subject.distance] as const;
  const packed: PackedValue[] = [];
  if (entered) packed.push([entered.id, entered.value, entered.at, 'e', ...place]);
  if (measured && measured.chosen !== null && state !== 'entered') packed.push([measured.id, measured.chosen, measured.at, 'm', ...place]);
  return packed;
}

/** Bytes of a JSON text as a browser may store it: UTF-8, and six for a sign that is written as an escape. */
export function bytesOf(json: string): number {
  let bytes = 0;
  for (const sign of json) {
    const code = sign.codePointAt(0) ?? 0;
    if (sign === '<' || code === 0x2028 || code === 0x2029) bytes += 6;
    else bytes += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
  }
  return bytes;
}
