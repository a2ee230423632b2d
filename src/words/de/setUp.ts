// German: the set-up walk.
import type { StepOf } from '../../optics/setUp/step.ts';
import type { StepId } from '../../optics/setUp/stepIds.ts';
import type { Each, SetUpWords } from '../setUpWords.ts';
import { sentences } from './sentence.ts';
import { DRAWN } from './stepsDrawn.ts';
import { SHOWN } from './stepsShown.ts';
import { SPOKEN } from './stepsSpoken.ts';
import { write } from './write.ts';

const DONE = 'Aufgebaut. Bereit für die erste Probe.';

const of = <Id extends StepId>(each: Each, step: StepOf<Id> & { readonly id: Id }): string => each[step.id](step);

export const words: SetUpWords = {
  title: 'Aufbau',
  progress: {
    label: 'Fortschritt',
    at: (step, all) => `Schritt ${write.number(step)} von ${write.number(all)}`,
    done: 'Alle Schritte erledigt',
  },
  noAperture: 'Geben Sie zuerst am Messplatz die größte Blende an.',
  speak: (what) => (what === 'done' ? DONE : of(SPOKEN, what)),
  show: (step) => of(SHOWN, step),
  pictures: DRAWN,
  step: {
    label: 'Schritt',
    before: 'Schon erledigt.',
    liveView: { ask: 'Ist das Livebild so scharf wie möglich?', sharp: 'Ja, scharf', not: 'Noch nicht' },
    keep: 'Ablesung notieren',
    kept: (reading) => sentences('notiert', reading),
  },
  done: {
    label: 'Aufgebaut',
    tooLate: 'Die erste Probe ist schon gemacht, deshalb wird der Aufbau nicht beim Durchlauf gespeichert. Gehen Sie ihn vor dem nächsten Durchlauf durch.',
  },
  leadsTo: 'Zur ersten Probe',
  means: 'erledigt: nächster Schritt',
  also: 'Außerdem möglich',
};
