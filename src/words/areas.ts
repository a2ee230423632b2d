// The areas of the catalogue, and where each language has them. Read with the first area, so that the panel's first script
// does not carry the list.
import type { ConditionsWords } from './conditionsWords.ts';
import type { EnteringWords } from './enteringWords.ts';
import type { FilesWords } from './filesWords.ts';
import type { FirstHoldWords } from './firstHoldWords.ts';
import type { KitWords } from './kitWords.ts';
import type { LogbookWords } from './logbookWords.ts';
import type { LookUpWords } from './lookUpWords.ts';
import type { PlanWords } from './planWords.ts';
import type { RecordWords } from './recordWords.ts';
import type { ResultWords } from './resultWords.ts';
import type { SessionWords } from './sessionWords.ts';
import type { SituationWords } from './situationWords.ts';
import type { SoundWords } from './soundWords.ts';
import type { SpokenWords } from './spokenWords.ts';
import type { SweepWords } from './sweepWords.ts';
import type { TakeWords } from './takeWords.ts';
import type { TroubleWords } from './troubleWords.ts';
import type { VoiceWords } from './voiceWords.ts';

/** The areas and what each can say. */
export interface Words {
  readonly conditions: ConditionsWords;
  readonly entering: EnteringWords;
  readonly files: FilesWords;
  readonly firstHold: FirstHoldWords;
  readonly kit: KitWords;
  readonly logbook: LogbookWords;
  readonly lookUp: LookUpWords;
  readonly plan: PlanWords;
  readonly record: RecordWords;
  readonly result: ResultWords;
  readonly session: SessionWords;
  readonly situation: SituationWords;
  readonly sound: SoundWords;
  readonly spoken: SpokenWords;
  readonly sweep: SweepWords;
  readonly take: TakeWords;
  readonly trouble: TroubleWords;
  readonly voice: VoiceWords;
}
export type Area = keyof Words;

type Language = { readonly [Name in Area]: () => Promise<{ readonly words: Words[Name] }> };

/** Literal imports: the extension's own policy lets nothing be fetched. */
export const LANGUAGES = {
  en: {
    conditions: () => import('./en/conditions.ts'),
    entering: () => import('./en/entering.ts'),
    files: () => import('./en/files.ts'),
    firstHold: () => import('./en/firstHold.ts'),
    kit: () => import('./en/kit.ts'),
    logbook: () => import('./en/logbook.ts'),
    lookUp: () => import('./en/lookUp.ts'),
    plan: () => import('./en/plan.ts'),
    record: () => import('./en/record.ts'),
    result: () => import('./en/result.ts'),
    session: () => import('./en/session.ts'),
    situation: () => import('./en/situation.ts'),
    sound: () => import('./en/sound.ts'),
    spoken: () => import('./en/spoken.ts'),
    sweep: () => import('./en/sweep.ts'),
    take: () => import('./en/take.ts'),
    trouble: () => import('./en/trouble.ts'),
    voice: () => import('./en/voice.ts'),
  },
} satisfies Record<string, Language>;

export const AREAS = Object.keys(LANGUAGES.en) as readonly Area[];

