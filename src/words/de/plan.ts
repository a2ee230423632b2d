// German: the plan of a job.
import type { Change } from '../../logbook/plan/changes.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { seconds, type Seconds } from '../../units.ts';
import { byUnit } from '../countryInUse.ts';
import { line } from '../line.ts';
import type { PlanWords } from '../planWords.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const CHANGES: readonly (readonly [keyof Change, string])[] = [
  ['tripod', 'das Stativ umstellen'],
  ['body', 'das Gehäuse wechseln'],
  ['lens', 'das Objektiv wechseln'],
  ['converter', 'den Konverter wechseln'],
  ['zoom', 'den Zoom verstellen'],
];

/** In whole minutes, one at least; ends in a point. */
function minutes(time: Seconds): string {
  const whole = Math.max(1, Math.round(time / 60));
  return whole < 60 ? write.unit(whole, 'minute') : write.duration(seconds(whole * 60));
}

export const words: PlanWords = {
  title: 'Plan',
  replaces: 'Ein neuer Plan ersetzt den alten. Was gemessen ist, bleibt im Logbuch.',
  form: {
    bodies: 'Gehäuse',
    lenses: 'Objektive',
    converters: 'Auch mit',
    zooms: 'Zooms',
    ends: { both: 'Beide Enden', wide: 'Nur Weitwinkel', tele: 'Nur Tele' },
    distances: {
      get label() {
        return byUnit({ m: 'Entfernungen, m', ft: 'Entfernungen, ft' });
      },
      get hint() {
        return byUnit({ m: 'Zum Beispiel „2,5 8“. Leer bedeutet je fünfzig Brennweiten.', ft: 'Zum Beispiel „8 25“. Leer bedeutet je fünfzig Brennweiten.' });
      },
      get fault() {
        return byUnit({
          m: 'Geben Sie Entfernungen in Metern an, von 0,05 bis 500, mit einem Leerzeichen dazwischen.',
          ft: 'Geben Sie Entfernungen in Fuß an, von 0,17 bis 1640, mit einem Leerzeichen dazwischen.',
        });
      },
    },
    make: 'Plan erstellen',
    fault: (fault) => {
      switch (fault.is) {
        case 'no body':
          return 'Wählen Sie mindestens ein Gehäuse.';
        case 'no lens':
          return 'Wählen Sie mindestens ein Objektiv.';
        case 'no focal length':
          return `Geben Sie zuerst in der Ausrüstung die Brennweite von ${fault.lens} an, dann wählen Sie es noch einmal.`;
      }
    },
    unfit: 'Das passt nicht. Prüfen Sie Ihre Auswahl.',
  },
  measured: 'Gemessen',
  next: 'Das Nächste messen',
  underWay: 'Ein Durchlauf läuft. Beenden Sie ihn zuerst vom Start aus.',
  anew: 'Neuen Plan erstellen',
  pace: ({ perSweep, sweeps }) =>
    sweeps === 0
      ? `Die Zeit ist geschätzt, ${minutes(perSweep)} je Durchlauf, bis Sie einen beendet haben.`
      : `Die Zeit folgt Ihrem eigenen Tempo, ${minutes(perSweep)} je Durchlauf.`,
  progress: ({ done, all, left, next }) =>
    next === null
      ? [`${write.number(done)} von ${write.number(all)} gemessen.`, 'Der Plan ist erledigt.']
      : [
          `${write.number(done)} von ${write.number(all)} gemessen, noch etwa ${minutes(left)} zu tun.`,
          `Als Nächstes: ${next.lens}, ${place(next)}, ${next.body}.`,
        ],
  stations: 'Situationen',
  details: (subject) => line([place(subject), subject.body]),
  is: { next: 'als Nächstes', 'to do': 'offen' },
  done: (value) => (value === null ? 'erledigt: kein Wert' : `erledigt: ${writeSteps(value)}`),
  before: (change) => {
    const wanted = CHANGES.filter(([part]) => change[part]).map(([, what]) => what);
    return wanted.length === 0 ? '' : `Zuerst ${write.list(wanted)}.`;
  },
  toEnter: 'Zum Einstellen',
  toEnterFor: (subject) => `Zum Einstellen für ${subject.lens}, ${place(subject)}, ${subject.body}`,
};
