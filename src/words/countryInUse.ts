// What is usual in the person's country. Every sentence that tells a distance reads it, and whatever a person has not chosen yet.
import { signal } from '@preact/signals';
import { countryAmong, type Country } from '../country.ts';

export const countryInUse = signal<Country>(countryAmong([]));

/** Of two sentences the one for the unit that the country measures in. */
export const byUnit = (of: Readonly<Record<Country['unit'], string>>): string => of[countryInUse.value.unit];
