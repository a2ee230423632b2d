// What the four lights are called beside their demonstration, and what a press of the switch says of each.
import type { Word } from '../../sweep/inputs.ts';
import type { Shown } from '../../practice/fourLights.ts';
import type { Gesture } from '../../sweep/understood.ts';

interface Told {
  readonly word: Extract<Word, 'solid' | 'delayed' | 'flicker' | 'nothing'>;
  readonly does: string;
  readonly press: Gesture;
  readonly when: string;
}

export const LIGHTS_TOLD: Record<Shown, Told> = {
  steady: { word: 'solid', does: 'On at once, and stays on.', press: 'short', when: 'after the tone' },
  late: { word: 'delayed', does: 'Comes on late.', press: 'double', when: 'in the hold' },
  flicker: { word: 'flicker', does: 'Goes out, even once.', press: 'short', when: 'in the hold' },
  dark: { word: 'nothing', does: 'Never comes on.', press: 'long', when: 'in the hold' },
};

export const LIGHTS_TITLE = 'What the light can do';
export const LIGHTS_OPEN = 'the four lights';
export const LIGHTS_CLOSE = 'Close the four lights';
