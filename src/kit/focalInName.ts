// The focal length that a lens is called by: "Corvid 85 f/1.8" is an 85, "Corvid 24-70 f/4" zooms from 24 to 70. Lenses are
// named so by common practice (no source). Figures with another unit, f-numbers and letters around them are no focal length.
import * as v from 'valibot';
import { FocalRange } from './lens.ts';

/** An f-number, with one or two figures: "f/1.8", "F 4-5.6", "1:2.8", and the factor of a converter, "1.4x", "2×". */
const NOT_LENGTHS =
  /\bf\s*\/?\s*\d+(?:\.\d+)?(?:\s*[-\u2013]\s*\d+(?:\.\d+)?)?|1\s*:\s*\d+(?:\.\d+)?(?:\s*[-\u2013]\s*\d+(?:\.\d+)?)?|\d+(?:\.\d+)?\s*[x\u00d7](?![a-z])/gi;
/** Two lengths of a zoom, or one; whole in their word but for the unit. */
const LENGTHS = /(?<![\p{L}\p{N}.])(\d+(?:\.\d+)?)(?:\s*(?:mm)?\s*(?:[-\u2013]|\bto\b)\s*(\d+(?:\.\d+)?))?\s*(mm)?(?![\p{L}\p{N}.]*[\p{L}\p{N}])/giu;

/** Null where the name tells no focal length, or where two of its numbers could be one. */
export function focalInName(name: string): FocalRange | null {
  const plain = name.replace(/(\d),(\d)/g, '$1.$2').replace(NOT_LENGTHS, ' ');
  const found = [...plain.matchAll(LENGTHS)].flatMap(([, from, to, unit]) => {
    const range = v.safeParse(FocalRange, { from: Number(from), to: Number(to ?? from) });
    return range.success ? [{ range: range.output, sure: unit !== undefined || to !== undefined }] : [];
  });
  const sure = found.filter((one) => one.sure);
  const [only, another] = sure.length > 0 ? sure : found;
  return only && !another ? only.range : null;
}
