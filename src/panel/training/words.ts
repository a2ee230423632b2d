// The training in words: what a hold was, and what a round comes to and asks the eye to watch for.
import { countedRight, namedRight, type TrainingHold, type TrainingLight } from '../../practice/training/round.ts';
import { RELIABLE, type Confusion, type Missed, type Reliability } from '../../practice/training/score.ts';

const WAS: Record<TrainingLight, string> = {
  steady: 'It was steady',
  late: 'It came late',
  flicker: 'It flickered',
  dark: 'It stayed dark',
};

/** One hold, as soon as it is told. */
export function heldInWords(hold: TrainingHold): string {
  const was = WAS[hold.shown];
  if (namedRight(hold)) return `Right. ${was}.`;
  if (!countedRight(hold)) return `No. ${was}.`;
  return hold.told === 'untold' ? `Right, it failed. ${was}.` : `Out is right. ${was}.`;
}

const times = ({ shown, missed }: Missed): string => `${missed} of ${shown}`;

/** What was taken for what in a round, the costly slips first. */
export function slipsInWords(confusion: Confusion): string[] {
  const { lateAsSteady, flickerAsSteady, darkAsSteady, steadyAsFailing, wrongKind } = confusion;
  const slip = (what: string, missed: Missed): string[] => (missed.missed > 0 ? [`${what}: ${times(missed)}.`] : []);
  return [
    ...slip('Late, told as steady', lateAsSteady),
    ...slip('Flicker, told as steady', flickerAsSteady),
    ...slip('Dark, told as steady', darkAsSteady),
    ...slip('Steady, told as failing', steadyAsFailing),
    ...slip('Failing, told as another kind', wrongKind),
  ];
}

/** The one thing to watch for next. */
export function watchFor({ lateAsSteady, flickerAsSteady, darkAsSteady, steadyAsFailing, wrongKind }: Confusion): string {
  const worst = [
    { missed: lateAsSteady.missed, sentence: 'Look at the light before you press: a late one is dark for its first moment.' },
    { missed: flickerAsSteady.missed, sentence: 'Keep your eye on the light until the time is up: one short gap is a flicker.' },
    { missed: steadyAsFailing.missed, sentence: 'Say that it failed only when you saw it fail; your own blink looks like a gap.' },
    { missed: wrongKind.missed, sentence: 'Dark first, then on: late. On first, then a gap: flicker. Never on: dark.' },
    { missed: darkAsSteady.missed, sentence: 'A light that never came on is told as “nothing”.' },
  ].toSorted((a, b) => b.missed - a.missed)[0];
  return worst && worst.missed > 0 ? worst.sentence : 'No slip in this round.';
}

const percent = (share: number): string => `${Math.floor(share * 100)}\u00A0%`;

/** How far the person has come, over the rounds that count. */
export function reliabilityInWords({ right, of, low, high, reached }: Reliability): string {
  const counted = `${right} of ${of} plain holds counted right, so at least ${percent(low)} and at most ${Math.ceil(high * 100)}\u00A0% of your holds (95\u00A0% sure)`;
  return reached
    ? `Reached: ${counted}. That is reliable enough for a sweep.`
    : `Not there yet: ${counted}. It is reached when the lower figure is ${percent(RELIABLE)}.`;
}
