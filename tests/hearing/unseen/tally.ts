// Counts what became of every transcript of a language, and names those that were not right.
import type { HeardLanguage } from '../../../src/hearing/languages/heardLanguage.ts';
import { heardAt, type Became } from './heardAt.ts';
import { MOMENTS, type Transcript, type Unseen } from './transcript.ts';

export interface Tally {
  readonly figures: Readonly<Record<string, number>>;
  readonly lines: readonly string[];
}

export function tally(language: HeardLanguage, unseen: Unseen): Tally {
  const { became, actedOn, isAskedAbout } = heardAt(language, unseen);
  const told = unseen.told.map((one) => ({ ...one, became: became(one.moment, one.heard, one.means) }));
  const many = (...ways: readonly Became[]): number => told.filter((one) => ways.includes(one.became)).length;
  const lookUps = told.filter(isLookUp);
  const talk = unseen.room.flatMap((heard) => MOMENTS.map((moment) => ({ heard, moment })));
  const acted = talk.flatMap((one) => {
    const done = actedOn(one.moment, one.heard);
    return done === null ? [] : [{ ...one, done }];
  });
  const asked = talk.filter(({ moment, heard }) => isAskedAbout(moment, heard));
  return {
    figures: {
      transcripts: told.length,
      right: many('right'),
      'asked back': many('asked back'),
      'asked as another': many('asked as another'),
      ignored: many('ignored'),
      wrong: many('wrong'),
      'right or asked back, %': percent(many('right', 'asked back'), told.length),
      'other speech': unseen.room.length,
      'other speech acted on, %': percent(acted.length, talk.length),
      'other speech asked about, %': percent(asked.length, talk.length),
      'look-ups': lookUps.length,
      'look-ups found, %': percent(lookUps.filter((one) => one.became === 'right').length, lookUps.length),
    },
    lines: [
      ...told.filter((one) => one.became !== 'right').map((one) => `${one.became} (${one.moment}, ${JSON.stringify(one.means)}): ${one.heard}`),
      ...acted.map(({ moment, heard, done }) => `acted on (${moment}): ${heard} → ${done}`),
      ...asked.map(({ moment, heard }) => `asked about (${moment}): ${heard}`),
    ],
  };
}

const isLookUp = ({ means }: Transcript): boolean => typeof means === 'object' && 'sought' in means;
const percent = (part: number, whole: number): number => Math.round((1000 * part) / whole) / 10;
