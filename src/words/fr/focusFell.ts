// French: how far from the target focus fell, and corrections with their intervals; what all that is said of photographs is made of.
import type { StepSize } from '../../photographs/focusError.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import { write } from './write.ts';

/** The size of a length at the target, in millimetres. */
export const lengthAtTarget = (value: number): string => write.unit(Math.abs(value), 'millimeter', Math.abs(value) < 10 ? 1 : 0);

export const sideOfTarget = (error: number): string => (error < 0 ? 'devant la mire' : 'derrière la mire');

export const marginOf = ({ low, high }: WithInterval): number => (high - low) / 2;

/** "12 mm ± 3 mm"; without its margin where too few shots give one. */
export const lengthWithin = (length: WithInterval): string =>
  `${lengthAtTarget(length.value)}${Number.isFinite(marginOf(length)) ? ` ± ${lengthAtTarget(marginOf(length))}` : ''}`;

/** After “tombe”: "à 12 mm ± 3 mm devant la mire". */
export const focusFell = (error: WithInterval): string => `à ${lengthWithin(error)} ${sideOfTarget(error.value)}`;

/** "+2,4 (95 % entre +1,8 et +3)", in steps. */
export const correctionBetween = ({ value, low, high }: WithInterval): string =>
  `${write.signed(value, 1)} (${write.percent(0.95)} entre ${write.signed(low, 1)} et ${write.signed(high, 1)})`;

/** What a step was taken to be worth, and by what. */
export const BY_STEP: Readonly<Record<StepSize['from'], string>> = {
  estimate: 'd’après une estimation de la valeur d’un pas',
  bracket: 'd’après la valeur d’un pas mesurée par une fourchette',
};
