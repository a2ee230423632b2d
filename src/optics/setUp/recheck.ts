// Asking, during a sweep, whether live view still shows critical focus: a bumped ring spoils every hold after it, and
// the focus light alone cannot tell it from a changed mind.

/** When it is asked: before the first hold, before finishing, and when holds contradict each other. */
export type RecheckMoment = 'start' | 'finish' | 'contradiction';

export interface Recheck {
  readonly say: string;
  readonly show: string;
  /** What to do when it is not sharp. */
  readonly ifNot: string;
}

const ASK = 'Is live view still sharp?';

export const RECHECKS: Record<RecheckMoment, Recheck> = {
  start: {
    say: ASK,
    show: 'Before the first hold: look once more at live view at full magnification; is it at its sharpest?',
    ifNot: 'Focus again in live view, set focus to manual, and begin.',
  },
  finish: {
    say: `Before you finish: ${ASK.toLowerCase()}`,
    show:
      'Before finishing: look at live view at full magnification without touching the ring; is it still at its ' +
      'sharpest?',
    ifNot: 'The focus moved: focus again in live view and start a fresh series; the holds so far are kept.',
  },
  contradiction: {
    say: `These holds disagree. ${ASK}`,
    show:
      'The last holds contradict the earlier ones: look at live view at full magnification without touching the ' +
      'ring; is it still at its sharpest?',
    ifNot: 'The focus moved: focus again in live view and start a fresh series; the holds so far are kept.',
  },
};
