// What was told last and what became of it, drawn when it is read: in whatever language the screens are in by then.
import type { Moment } from '../../units.ts';
import type { Heard } from './session.ts';

export const heardAs = (told: () => string, became: () => string, by: Heard['by'], at: Moment): Heard => ({
  get words() {
    return told();
  },
  get became() {
    return became();
  },
  by,
  at,
});
