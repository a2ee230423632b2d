// Which word and which press of the switch tell a light.
import type { ShownLight } from '../../practice/fourLights.ts';
import type { Word } from '../../sweep/inputs.ts';
import type { Gesture } from '../../sweep/understood.ts';

export const TOLD_BY: Record<ShownLight, { readonly word: Word; readonly press: Gesture }> = {
  steady: { word: 'solid', press: 'short' },
  late: { word: 'delayed', press: 'double' },
  flicker: { word: 'flicker', press: 'short' },
  dark: { word: 'nothing', press: 'long' },
};
