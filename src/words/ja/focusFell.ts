// Japanese: how far from the target focus fell, and corrections with their intervals; what all that is said of photographs is made of.
import type { StepSize } from '../../photographs/focusError.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import { write } from './write.ts';

/** The size of a length at the target, in millimetres. */
export const lengthAtTarget = (value: number): string => write.unit(Math.abs(value), 'millimeter', Math.abs(value) < 10 ? 1 : 0);

export const sideOfTarget = (error: number): string => (error < 0 ? 'ターゲットの手前' : 'ターゲットの奥');

export const marginOf = ({ low, high }: WithInterval): number => (high - low) / 2;

/** "12 mm ± 3 mm"; without its margin where too few shots give one. */
export const lengthWithin = (length: WithInterval): string =>
  `${lengthAtTarget(length.value)}${Number.isFinite(marginOf(length)) ? ` ± ${lengthAtTarget(marginOf(length))}` : ''}`;

/** 「ターゲットの手前12 mm ± 3 mm」, where focus fell. */
export const focusFell = (error: WithInterval): string => `${sideOfTarget(error.value)}${lengthWithin(error)}`;

/** 「+1.8〜+3」. */
export const between = (from: number, to: number): string => `${write.signed(from, 1)}〜${write.signed(to, 1)}`;

/** 「+2.4(95%区間+1.8〜+3)」, in steps. */
export const correctionBetween = ({ value, low, high }: WithInterval): string => `${write.signed(value, 1)}（95%区間${between(low, high)}）`;

/** What a step was taken to be worth, and by what. */
export const BY_STEP: Readonly<Record<StepSize['from'], string>> = {
  estimate: '1ステップの移動量の推定値による',
  bracket: 'ブラケットで実測した1ステップの移動量による',
};
