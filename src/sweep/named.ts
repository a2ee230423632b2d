// Whether anybody has said whose sweep it is. Apart from the plan's schemas, which the panel reads later.
import type { Subject, Unnamed } from './plan.ts';

export const isNamed = (subject: Subject | Unnamed): subject is Subject => subject.situation !== null;

export const NOTHING_TOLD: Unnamed = { situation: null, body: null, lens: null, converter: null, focalLength: null, distance: null };

/** The situation of every sweep with the practice camera. */
export const PRACTICE = 'practice';

export const isPractised = (subject: Subject): boolean => subject.situation === PRACTICE;
