// What is usual in the person's country. Every sentence that tells a distance reads it, and whatever a person has not chosen yet.
import { signal } from '@preact/signals';
import { countryAmong, type Country } from '../country.ts';

export const countryInUse = signal<Country>(countryAmong([]));
