// German: the sound check, and what is so where nothing sounds or nothing is spoken.
import type { SoundWords } from '../soundWords.ts';
import { correctionSaid } from '../taught.ts';
import { write } from './write.ts';

const percent = (value: number): string => write.percent(value / 100);

export const words: SoundWords = {
  title: 'Tonprüfung',
  offer: 'Tonprüfung: Töne und Stimme einmal hören',
  play: 'Töne und einen Wert abspielen',
  loudness: 'Lautstärke',
  percent,
  loudnessAt: (value) => `Lautstärke: ${percent(value)}`,
  playing: 'Ein steigender Ton beginnt eine Probe, ein fallender beendet sie. Dann wird ein Wert gesprochen.',
  get heard() {
    return `Haben Sie zwei Töne und „${correctionSaid(6)}“ gehört? Wenn nicht, stellen Sie den Computer lauter oder wählen Sie einen anderen Ausgang.`;
  },
  done: 'Fertig',
  tonesOnly: 'Haben Sie zwei Töne gehört? Die Stimme ist aus, Werte werden nur gezeigt.',
  get speechOnly() {
    return `Haben Sie „${correctionSaid(6)}“ gehört? Die Töne sind aus, eine Probe beginnt und endet ohne.`;
  },
  standsStill: 'Dieser Computer gibt keinen Ton aus. Schließen Sie Lautsprecher oder Kopfhörer an. Bis dahin wird alles gezeigt.',
  mute: (language) =>
    `Der Browser findet auf diesem Computer keine Stimme für ${language}. Alles wird gezeigt, mit Tönen, aber nicht gesprochen. ` +
    'Um es zu hören, installieren Sie eine Stimme in den Spracheinstellungen des Systems.',
  off: 'Töne und Stimme sind beide aus: Nur der Bildschirm zeigt, wann eine Probe beginnt und endet.',
  switchOn: 'Beide einschalten',
};
