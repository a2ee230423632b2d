// English: what may be wrong beside the correction.
import { writeSteps } from '../../sweep/scale.ts';
import type { ArrowsContradict, Trouble } from '../../sweep/trouble/trouble.ts';
import type { Named, TroubleWords } from '../troubleWords.ts';
import { CHECKS } from './checks.ts';
import { drifted } from './drift.ts';
import { write } from './write.ts';

const NAMES: Readonly<Record<Named['trouble'], string>> = {
  'flickers everywhere': 'Flickers everywhere',
  'never lights': 'Dark everywhere',
  'lights everywhere': 'Steady everywhere',
  'hole in the band': 'A gap in the band',
  'arrows contradict the lights': 'Arrows contradict the light',
  'focus moved': 'The focus moved',
  'verdicts misjudged': 'Answers that do not fit',
  'band drifts': 'A band that drifts',
  play: 'The way you turn matters',
  'sweeps differ': 'The sweeps differ',
};

function seen(found: Trouble): string {
  switch (found.trouble) {
    case 'flickers everywhere':
      return 'The light fails at every value, mostly by flickering.';
    case 'never lights':
      return 'The light stays dark at every value.';
    case 'lights everywhere':
      return 'The light is steady at every value, from one limit to the other.';
    case 'hole in the band':
      return found.from === found.to
        ? `The light fails at ${writeSteps(found.from)} but is steady on both sides of it. Do not trust the centre.`
        : `The light fails from ${writeSteps(found.from)} to ${writeSteps(found.to)} but is steady on both sides. Do not trust the centre.`;
    case 'arrows contradict the lights':
      return ARROWS[found.how];
    case 'verdicts misjudged':
      return found.values.length === 1
        ? `The answer at ${writeSteps(found.values[0] ?? 0)} does not fit the others. It does not count.`
        : `The answers at ${write.list(found.values.map(writeSteps))} do not fit the others. They do not count.`;
    case 'band drifts':
      return `The band moves about ${inSteps(Math.abs(found.rate))} a minute. The centre is where it lies now.`;
    case 'play':
      return `After turning up, the band lies about ${inSteps(2 * found.size)} from where it lies after turning down. The centre is between the two.`;
    case 'focus moved':
      return found.seen ? 'In live view the focus had moved.' : drifted(found);
  }
}

const ARROWS: Readonly<Record<ArrowsContradict['how'], string>> = {
  'turned round': 'The arrows point the other way than the kit says of this body.',
  'turned midway': 'The arrows pointed one way at first, and then the other.',
  'by chance': 'The arrows point up and down without regard to the light.',
};

function evidence(found: Named): string {
  switch (found.trouble) {
    case 'flickers everywhere':
    case 'never lights':
    case 'lights everywhere': {
      const alike =
        found.alike === found.of
          ? `All ${write.number(found.of)} values looked the same.`
          : `${write.number(found.alike)} of ${write.number(found.of)} values looked the same.`;
      return `${alike} Odds against any band: ${odds(found)}.`;
    }
    case 'hole in the band':
      return `Odds against a band without a gap: ${odds(found)}.`;
    case 'arrows contradict the lights':
      return `Odds against arrows that point as the kit says: ${odds(found)}.`;
    case 'verdicts misjudged':
      return `Odds that they were misjudged: ${odds(found)}.`;
    case 'band drifts':
      return `Odds against a band that stays: ${odds(found)}.`;
    case 'play':
      return `Odds against a band that lies the same whichever way you turn: ${odds(found)}.`;
    case 'focus moved':
      return `Odds that it moved: ${odds(found)}, most likely after hold ${write.number(found.afterHold)}.`;
    case 'sweeps differ':
      return `They are ${inSteps(found.apart)} apart. Chance explains up to ${inSteps(found.allowed)}, ${write.percent(0.95)} sure. Odds that they differ: ${odds(found)}.`;
  }
}

/** Odds beyond this say no more to a person. */
const MOST = 1000;
const odds = ({ bayesFactor }: { readonly bayesFactor: number }): string =>
  bayesFactor > MOST ? `more than ${write.number(MOST)} to 1` : `${write.number(bayesFactor)} to 1`;

const inSteps = (count: number): string => write.count(count, { one: '# step', other: '# steps' }, 1);

export const words: TroubleWords = {
  name: (found) => (found.trouble === 'focus moved' && !found.seen ? 'Has the focus moved?' : NAMES[found.trouble]),
  seen,
  evidence,
  checks: CHECKS,
  toCheck: {
    open: 'What to check',
    title: 'What to check, the likeliest first',
    figures: 'Figures',
    manual: 'Follow your camera maker’s manual wherever it differs from this.',
  },
};
