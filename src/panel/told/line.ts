// What a line of chips shows, and where it tells what was typed.
import type { Plan, Unnamed } from '../../sweep/plan.ts';
import type { Described, Description } from '../session/session.ts';

export type Telling = (told: Description) => Described;

export interface Line {
  readonly parts: Unnamed;
  readonly onBody: Pick<Plan, 'scale' | 'arrows'>;
  readonly tell: Telling;
}
