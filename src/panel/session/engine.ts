// What moves a sweep: the reducer, and with it all that is judged after a verdict. The start is drawn without it, so it comes
// with the desk, before which no sweep is begun or shown.
import { currentPrompt } from '../../sweep/currentPrompt.ts';
import { openSweep } from '../../sweep/opening.ts';
import { transition } from '../../sweep/transition.ts';
import { followed } from './follow.ts';

export const engine = { openSweep, transition, currentPrompt, followed };

export type Engine = typeof engine;
