// A number as it stands in a field: with the decimal sign of the screens' language, as a person there would have typed it.
import { computed } from '@preact/signals';
import { inUse } from '../../words/inUse.ts';
import { writing } from '../../words/writing.ts';

const write = computed(() => writing(inUse.value.screens));

/** At most so many decimals, without idle zeros, and a true minus. */
export const numberTyped = (value: number, decimals = 9): string => write.value.typed(Number(value.toFixed(decimals)));
