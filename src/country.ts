// What is usual in a person's country, as far as it differs: what distances are told in, and the paper in its printers. The browser says no
// country, but the languages a person likes mostly name one. Plain English names none: whoever likes nothing else gets what most of the world
// has, and may choose otherwise.

export interface Country {
  readonly unit: 'm' | 'ft';
  readonly paper: 'A4' | 'Letter';
}

/** Unicode CLDR, measurement system "US" (from memory). */
const IN_FEET: ReadonlySet<string> = new Set(['US', 'LR', 'MM']);

/** Unicode CLDR, paper size "US-Letter" (from memory); DO: common practice, no source. */
const ON_LETTER: ReadonlySet<string> = new Set(['US', 'CA', 'MX', 'PH', 'CL', 'CO', 'CR', 'GT', 'NI', 'PA', 'PR', 'SV', 'VE', 'BZ', 'DO']);

/** What distances are told in: as in the country, or as a person chose. */
export const DISTANCES = ['country', 'm', 'ft'] as const;
export type Distances = (typeof DISTANCES)[number];

export const isDistances = (name: string): name is Distances => (DISTANCES as readonly string[]).includes(name);

/** Spoken first in so many countries that it says nothing of where a person is. */
const EVERYWHERE = 'en';

/** Of the first of these tags, best liked first, that names a country or whose language is likeliest spoken in one: `en-CA`, `de`. */
export function countryAmong(liked: readonly string[]): Country {
  const region = liked.map(regionOf).find((found) => found !== null) ?? '';
  return { unit: IN_FEET.has(region) ? 'ft' : 'm', paper: ON_LETTER.has(region) ? 'Letter' : 'A4' };
}

/** The same, with what the person chose. */
export function countryFor(chosen: Distances, liked: readonly string[]): Country {
  const usual = countryAmong(liked);
  return chosen === 'country' ? usual : { ...usual, unit: chosen };
}

function regionOf(tag: string): string | null {
  try {
    const locale = new Intl.Locale(tag);
    return locale.region ?? (locale.language === EVERYWHERE ? null : (locale.maximize().region ?? null));
  } catch {
    // No tag at all.
    return null;
  }
}
