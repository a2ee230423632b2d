// What a person may hand to whoever helps them with a fault: versions, settings, languages and how much is kept. Each field is named here
// one by one, so that nothing of the kit or the logbook can slip in with the rest.
import type { Settings } from '../settings.ts';
import type { Moment } from '../units.ts';
import type { Library } from './library.ts';

export interface Reported {
  readonly at: Moment;
  readonly versions: { readonly panel: string; readonly browser: string };
  readonly languages: { readonly screens: string; readonly voice: string };
  readonly settings: Settings;
  readonly library: Library;
  readonly backup: Moment | null;
  /** The ids of what the panel says went wrong; one of them may name a stored key. */
  readonly mishaps: readonly string[];
}

/** The text of the file. */
export const writeFaultReport = (now: Reported): string => `${JSON.stringify(faultReport(now), null, 2)}\n`;

const faultReport = ({ at, versions, languages, settings, library, backup, mishaps }: Reported) => ({
  sweepbook: 'fault-report',
  /** In milliseconds since 1970, as in a backup. */
  made: at,
  versions,
  languages,
  settings: settingsOf(settings),
  kept: countsOf(library),
  backup,
  mishaps: mishaps.map((id) => id.split(':')[0]),
});

const settingsOf = ({ manner, voice, sound, loudness, soundChecked, logbook, training, coached, language, look }: Settings) => ({
  manner: { care: manner.care, order: manner.order, pace: manner.pace, holdTime: manner.holdTime },
  voice: {
    listen: voice.listen,
    wish: voice.wish,
    open: voice.open,
    learn: voice.learn,
    speak: voice.speak,
    rate: voice.rate,
    /** Its name tells of the computer. */
    own: voice.voice !== '',
  },
  sound,
  loudness,
  soundChecked,
  logbook: { days: logbook.days, carried: logbook.sync !== null, remind: logbook.remind },
  training: { rounds: training.rounds.length, own: training.own },
  coached,
  language,
  look,
});

const countsOf = ({ version, kit, records, byHand, entries, notes, proofs }: Library) => ({
  version,
  bodies: kit.bodies.length,
  lenses: kit.lenses.length,
  converters: kit.converters.length,
  situations: kit.situations.length,
  records: records.length,
  practised: records.filter(({ practice }) => practice).length,
  byHand: byHand.length,
  entries: entries.length,
  notes: notes.length,
  proofs: proofs.length,
});
