// A number as it stands in a field: with the decimal sign of the screens' language, as a person there would have typed it.
import { inUse } from '../../words/inUse.ts';
import { writing } from '../../words/writing.ts';

/** At most so many decimals, without idle zeros, and a true minus. */
export const numberTyped = (value: number, decimals = 9): string => writing(inUse.value.screens).typed(Number(value.toFixed(decimals)));
