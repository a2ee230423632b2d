// Every setting by what is written of it: its label, and all that explains it, also what only shows once something else is switched on. The
// search reads this; a test holds it against the labels on the screen.
import { LANGUAGES } from '../../language.ts';
import type { Settings } from '../../settings.ts';
import { words } from '../../words/catalogue.ts';
import { ownName } from '../../words/named.ts';
import type { SettingsWords } from '../../words/settingsWords.ts';

export type SettingName =
  | 'care'
  | 'order'
  | 'hold time'
  | 'pace'
  | 'shortcut'
  | 'speech'
  | 'tones'
  | 'sound check'
  | 'due again'
  | 'backup'
  | 'computers'
  | 'listening'
  | 'hearing check'
  | 'what was heard'
  | 'theme'
  | 'far view'
  | 'language'
  | 'voice language'
  | 'distances';

type SettingsPage = keyof SettingsWords['pages'];

export interface NamedSetting {
  readonly is: SettingName;
  readonly page: SettingsPage;
  readonly label: string;
  readonly says: readonly string[];
}

type Labelled = Readonly<Record<string, { readonly label: string; readonly note?: string }>>;

/** In the order of the screen. */
export function namedSettings({ manner }: Settings): readonly NamedSetting[] {
  const { working, shortcut, sound, look, language, again, backup, computers, listening } = words('settings');
  const { care, cares, order, orders } = words('manner');
  const check = words('sound');
  // Of a person's own pace no time is set; any stands for it.
  const toDial = working.toDial(manner.pace.set === 'counted' ? manner.pace.toDial : manner.holdTime);
  return [
    { is: 'care', page: 'working', label: care, says: optionsOf(cares) },
    { is: 'order', page: 'working', label: order, says: optionsOf(orders) },
    { is: 'hold time', page: 'working', label: working.holdTime(manner.holdTime), says: [working.holdTimeNote] },
    { is: 'pace', page: 'working', label: working.pace, says: [...optionsOf(working.paces), toDial] },
    { is: 'shortcut', page: 'working', label: shortcut.title, says: [shortcut.change, shortcut.where] },
    { is: 'speech', page: 'sound', label: sound.speak, says: [sound.rate, sound.voice, sound.anyVoice, ...Object.values(sound.rates)] },
    { is: 'tones', page: 'sound', label: sound.tones.label, says: [sound.tones.note] },
    { is: 'sound check', page: 'sound', label: check.title, says: [check.loudness, check.play, check.off, check.switchOn] },
    { is: 'listening', page: 'voice', label: listening.by, says: listeningSays(listening) },
    { is: 'hearing check', page: 'voice', label: listening.check, says: [] },
    { is: 'what was heard', page: 'voice', label: listening.erase, says: [listening.kept] },
    { is: 'theme', page: 'look', label: look.theme, says: optionsOf(look.themes) },
    { is: 'far view', page: 'look', label: look.far.label, says: [look.far.note] },
    { is: 'language', page: 'language', label: language.screens, says: LANGUAGES.map(ownName) },
    { is: 'voice language', page: 'language', label: language.voice, says: [language.asScreens, language.note, ...LANGUAGES.map(ownName)] },
    { is: 'distances', page: 'language', label: language.distances, says: Object.values(language.units) },
    { is: 'due again', page: 'logbook', label: again.after, says: [again.title] },
    { is: 'backup', page: 'logbook', label: backup.remind.label, says: [backup.title, backup.remind.note] },
    { is: 'computers', page: 'logbook', label: computers.carry.label, says: [computers.title, computers.carry.note] },
  ];
}

const listeningSays = ({ recognisers, open, openings, learn, noRecogniser, title }: SettingsWords['listening']): readonly string[] => [
  title,
  ...optionsOf(recognisers),
  noRecogniser,
  open,
  ...optionsOf(openings),
  learn.label,
  learn.note,
];

const optionsOf = (options: Labelled): readonly string[] => Object.values(options).flatMap(({ label, note }) => (note ? [label, note] : [label]));
