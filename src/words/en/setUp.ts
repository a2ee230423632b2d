// English: the set-up walk.
import type { StepOf } from '../../optics/setUp/step.ts';
import type { StepId } from '../../optics/setUp/stepIds.ts';
import type { Each, SetUpWords } from '../setUpWords.ts';
import { sentences } from './sentence.ts';
import { DRAWN } from './stepsDrawn.ts';
import { SHOWN } from './stepsShown.ts';
import { SPOKEN } from './stepsSpoken.ts';
import { write } from './write.ts';

const DONE = 'Set up. Ready for the first hold.';

const of = <Id extends StepId>(each: Each, step: StepOf<Id> & { readonly id: Id }): string => each[step.id](step);

export const words: SetUpWords = {
  title: 'Set-up walk',
  progress: { label: 'Progress', at: (step, all) => `Step ${write.number(step)} of ${write.number(all)}`, done: 'Every step is done' },
  noAperture: 'Enter the widest aperture at the bench first.',
  speak: (what) => (what === 'done' ? DONE : of(SPOKEN, what)),
  show: (step) => of(SHOWN, step),
  pictures: DRAWN,
  step: {
    label: 'Step',
    before: 'Done before.',
    liveView: { ask: 'Is live view at its sharpest?', sharp: 'It is sharp', not: 'It is not' },
    keep: 'Keep this reading',
    kept: (reading) => sentences('kept', reading),
  },
  done: {
    label: 'Set up',
    tooLate: 'The first hold was taken already, so the set-up is not kept with this sweep. Walk through it before the next one.',
  },
  leadsTo: 'To the first hold',
  means: 'done: next step',
  also: 'Also understood now',
};
