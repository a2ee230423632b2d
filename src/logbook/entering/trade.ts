// Where no value lies in every band, which situations can be served together and what that costs the others: one option
// for every largest set of bands that share a value, and in it the value that uses least of their half-bands.
import { valuesOf, type Scale } from '../../sweep/scale.ts';
import { fitOf, type Band } from './band.ts';
import { oneValue, type Choice } from './oneValue.ts';

/** Serving most situations first; one option when a value serves all. */
export function tradeOf(scale: Scale, bands: readonly Band[]): Choice[] {
  const sets = valuesOf(scale).map((value) => bands.filter((band) => fitOf(value, band).inside));
  const largest = sets.filter(
    (set, at) =>
      set.length > 0 &&
      !sets.some((other, index) => set.every((band) => other.includes(band)) && (other.length > set.length || (other.length === set.length && index < at))),
  );
  return largest
    .toSorted((a, b) => b.length - a.length)
    .flatMap((set) => {
      const range = { low: Math.max(...set.map(({ low }) => low)), high: Math.min(...set.map(({ high }) => high)) };
      const within = valuesOf(scale).filter((value) => value >= range.low && value <= range.high);
      const [min, max] = [within[0], within.at(-1)];
      if (min === undefined || max === undefined) return [];
      const choice = oneValue({ min, max, step: scale.step }, set, { by: 'worst share' });
      return choice ? [{ value: choice.value, fits: bands.map((band) => fitOf(choice.value, band)) }] : [];
    });
}
