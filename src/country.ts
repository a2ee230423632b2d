// What is usual in a person's country, as far as it differs: what distances are told in, and the paper in its printers. The browser says no
// country, but the languages a person likes mostly name one.

export interface Country {
  readonly unit: 'm' | 'ft';
  readonly paper: 'A4' | 'Letter';
}

/** Unicode CLDR, measurement system "US" (from memory). */
const IN_FEET: ReadonlySet<string> = new Set(['US', 'LR', 'MM']);

/** Unicode CLDR, paper size "US-Letter" (from memory); DO: common practice, no source. */
const ON_LETTER: ReadonlySet<string> = new Set(['US', 'CA', 'MX', 'PH', 'CL', 'CO', 'CR', 'GT', 'NI', 'PA', 'PR', 'SV', 'VE', 'BZ', 'DO']);

/** Of the first of these tags, best liked first, that names a country or whose language is likeliest spoken in one: `en-CA`, `de`. */
export function countryAmong(liked: readonly string[]): Country {
  const region = liked.map(regionOf).find((found) => found !== null) ?? '';
  return { unit: IN_FEET.has(region) ? 'ft' : 'm', paper: ON_LETTER.has(region) ? 'Letter' : 'A4' };
}

function regionOf(tag: string): string | null {
  try {
    return new Intl.Locale(tag).maximize().region ?? null;
  } catch {
    // No tag at all.
    return null;
  }
}
