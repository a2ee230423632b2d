// The areas of the catalogue, and where each language has them. Read with the first area, so that the panel's first script
// does not carry the list.
import type { BenchWords } from './benchWords.ts';
import type { CautionsWords } from './cautionsWords.ts';
import type { ConditionsWords } from './conditionsWords.ts';
import type { EnteredWords } from './enteredWords.ts';
import type { EnteringWords } from './enteringWords.ts';
import type { FilesWords } from './filesWords.ts';
import type { FirstHoldWords } from './firstHoldWords.ts';
import type { HelpWords } from './helpWords.ts';
import type { KitWords } from './kitWords.ts';
import type { LogbookWords } from './logbookWords.ts';
import type { LookUpWords } from './lookUpWords.ts';
import type { MannerWords } from './mannerWords.ts';
import type { PhotographsWords } from './photographsWords.ts';
import type { PlacedWords } from './placedWords.ts';
import type { PlanWords } from './planWords.ts';
import type { PracticePicturesWords } from './practicePicturesWords.ts';
import type { PracticeWords } from './practiceWords.ts';
import type { PrintWords } from './printWords.ts';
import type { ReadingsWords } from './readingsWords.ts';
import type { RecordWords } from './recordWords.ts';
import type { ResultWords } from './resultWords.ts';
import type { SeriesWords } from './seriesWords.ts';
import type { SessionWords } from './sessionWords.ts';
import type { SettingsWords } from './settingsWords.ts';
import type { SetUpWords } from './setUpWords.ts';
import type { SituationWords } from './situationWords.ts';
import type { SoundWords } from './soundWords.ts';
import type { SpokenWords } from './spokenWords.ts';
import type { StartWords } from './startWords.ts';
import type { StoreWords } from './storeWords.ts';
import type { SweepWords } from './sweepWords.ts';
import type { TakeWords } from './takeWords.ts';
import type { ToldWords } from './toldWords.ts';
import type { TrainingWords } from './trainingWords.ts';
import type { TroubleWords } from './troubleWords.ts';
import type { VoiceWords } from './voiceWords.ts';

/** The areas and what each can say. */
export interface Words {
  readonly bench: BenchWords;
  readonly cautions: CautionsWords;
  readonly conditions: ConditionsWords;
  readonly entered: EnteredWords;
  readonly entering: EnteringWords;
  readonly files: FilesWords;
  readonly firstHold: FirstHoldWords;
  readonly help: HelpWords;
  readonly kit: KitWords;
  readonly logbook: LogbookWords;
  readonly lookUp: LookUpWords;
  readonly manner: MannerWords;
  readonly photographs: PhotographsWords;
  readonly placed: PlacedWords;
  readonly plan: PlanWords;
  readonly practice: PracticeWords;
  readonly practicePictures: PracticePicturesWords;
  readonly print: PrintWords;
  readonly readings: ReadingsWords;
  readonly record: RecordWords;
  readonly result: ResultWords;
  readonly series: SeriesWords;
  readonly session: SessionWords;
  readonly settings: SettingsWords;
  readonly setUp: SetUpWords;
  readonly situation: SituationWords;
  readonly sound: SoundWords;
  readonly spoken: SpokenWords;
  readonly start: StartWords;
  readonly store: StoreWords;
  readonly sweep: SweepWords;
  readonly take: TakeWords;
  readonly told: ToldWords;
  readonly training: TrainingWords;
  readonly trouble: TroubleWords;
  readonly voice: VoiceWords;
}
export type Area = keyof Words;

type Language = { readonly [Name in Area]: () => Promise<{ readonly words: Words[Name] }> };

/** Literal imports: the extension's own policy lets nothing be fetched. */
export const LANGUAGES = {
  en: {
    bench: () => import('./en/bench.ts'),
    cautions: () => import('./en/cautions.ts'),
    conditions: () => import('./en/conditions.ts'),
    entered: () => import('./en/entered.ts'),
    entering: () => import('./en/entering.ts'),
    files: () => import('./en/files.ts'),
    firstHold: () => import('./en/firstHold.ts'),
    help: () => import('./en/help.ts'),
    kit: () => import('./en/kit.ts'),
    logbook: () => import('./en/logbook.ts'),
    lookUp: () => import('./en/lookUp.ts'),
    manner: () => import('./en/manner.ts'),
    photographs: () => import('./en/photographs.ts'),
    placed: () => import('./en/placed.ts'),
    plan: () => import('./en/plan.ts'),
    practice: () => import('./en/practice.ts'),
    practicePictures: () => import('./en/practicePictures.ts'),
    print: () => import('./en/print.ts'),
    readings: () => import('./en/readings.ts'),
    record: () => import('./en/record.ts'),
    result: () => import('./en/result.ts'),
    series: () => import('./en/series.ts'),
    session: () => import('./en/session.ts'),
    settings: () => import('./en/settings.ts'),
    setUp: () => import('./en/setUp.ts'),
    situation: () => import('./en/situation.ts'),
    sound: () => import('./en/sound.ts'),
    spoken: () => import('./en/spoken.ts'),
    start: () => import('./en/start.ts'),
    store: () => import('./en/store.ts'),
    sweep: () => import('./en/sweep.ts'),
    take: () => import('./en/take.ts'),
    told: () => import('./en/told.ts'),
    training: () => import('./en/training.ts'),
    trouble: () => import('./en/trouble.ts'),
    voice: () => import('./en/voice.ts'),
  },
} satisfies Record<string, Language>;

export const AREAS = Object.keys(LANGUAGES.en) as readonly Area[];
