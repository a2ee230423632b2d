// German: one situation of the logbook.
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { seconds } from '../../units.ts';
import { line } from '../line.ts';
import type { SituationWords } from '../situationWords.ts';
import { driftTold } from './monthsOfDrift.ts';
import { shown } from './proved.ts';
import { write } from './write.ts';

const CAME: Readonly<Record<Measured['by'], string>> = {
  sweep: 'in einem Durchlauf gefunden',
  'by hand': 'von Hand eingetragen',
  'from a table': 'aus einer Tabelle',
  'from another computer': 'von einem anderen Computer',
};

const NO_VALUE: Readonly<Record<Measured['found'], string>> = {
  band: 'kein Wert',
  value: 'kein Wert',
  'carried over': 'außerhalb des Bereichs',
  'past the limit': 'jenseits der Grenze',
  'beyond the scale': 'außerhalb des Bereichs',
  nothing: 'kein Band',
};

/** So many of the newest values stand in one line. */
const NEWEST = 6;

const HOLDS = { one: '# Probe', other: '# Proben' };
const STEPS = { one: '# Stufe', other: '# Stufen' };

/** A length on the range of corrections, to a tenth. */
const stepsOf = (value: number): string => write.count(value, STEPS, 1);

export const words: SituationWords = {
  gone: 'Diese Situation ist nicht mehr im Logbuch.',
  lastValue: 'Letzter Wert',
  value: 'Gültiger Wert',
  dueAgain: 'Wieder fällig',
  toEnter: 'Werte für dieses Objektiv',
  photographs: 'Mit Aufnahmen prüfen',
  recheck: 'Schnell nachprüfen',
  anew: 'Neu messen',
  measure: 'Messen',
  answer: {
    sure: ({ by, chosen, within }, value) => {
      if (by !== 'sweep') return CAME[by];
      if (within === null) return '';
      const sure = `zu ${write.chance(within)} sicher auf eine Stufe genau`;
      return chosen === null || chosen === value ? sure : `${writeSteps(chosen)}: ${sure}`;
    },
    before: (measured) => {
      const values = measured.map(({ chosen, found }) => (chosen === null ? NO_VALUE[found] : writeSteps(chosen)));
      const shownValues = values.length > NEWEST ? ['\u2026', ...values.slice(-NEWEST)] : values;
      const since = measured[0] ? ` seit ${write.monthAndYear(measured[0].at)}` : '';
      return `${write.count(measured.length, { one: 'Einmal', other: '#\u2011mal' })} gemessen${since}: ${shownValues.join(', ')}`;
    },
    notDue: 'Noch nicht wieder fällig.',
    moreReasons: (count) => write.count(count, { one: 'Ein weiterer Grund', other: '# weitere Gründe' }),
  },
  rooms: {
    evidence: 'Belege',
    kept: ({ measured, entries, proofs }) =>
      line([
        measured.length > 0 && `${write.number(measured.length)} gemessen`,
        entries.length > 0 && `${write.number(entries.length)} eingestellt`,
        proofs.length > 0 && `${write.number(proofs.length)} mit Aufnahmen`,
      ]) || 'noch nichts',
    entering: 'Einstellen',
    inCamera: (value) => (value === null ? 'noch nichts eingestellt' : `${writeSteps(value)} ist in der Kamera`),
    others: 'Andere Situationen dieses Objektivs',
    situations: (count) => write.count(count, { one: '# Situation', other: '# Situationen' }),
    figures: 'Zahlen',
  },
  figures: ({ low, high, centre, interval, within, holds, seconds: taken }) => [
    ...(low !== null && high !== null ? [{ what: 'Band', is: `${writeSteps(low)} bis ${writeSteps(high)}` }] : []),
    ...(centre !== null ? [{ what: 'Mitte', is: write.signed(centre, 1) }] : []),
    ...(interval ? [{ what: `Mitte, ${write.percent(0.95)} sicher`, is: `${write.signed(interval.from, 1)} bis ${write.signed(interval.to, 1)}` }] : []),
    ...(within !== null ? [{ what: 'Auf eine Stufe', is: `zu ${write.chance(within)} sicher` }] : []),
    ...(holds !== null ? [{ what: 'Proben', is: write.number(holds) }] : []),
    ...(taken !== null ? [{ what: 'Zeit', is: write.duration(seconds(taken)) }] : []),
  ],
  retire: 'Diese Situation ausmustern',
  bringBack: 'Diese Situation zurückholen',
  history: {
    title: 'Verlauf',
    none: 'Hier wurde noch nichts gemessen, eingestellt oder fotografiert.',
    chart: 'Punkte: gemessen, mit 95-%-Intervall. Quadrate: in der Kamera eingestellt.',
    chartWithDrift: 'Punkte: gemessen, mit 95-%-Intervall. Getönt: wo die Drift mit 95\u00a0% Sicherheit liegt. Quadrate: in der Kamera eingestellt.',
    drifted: driftTold,
    entered: ({ at }) => `in der Kamera eingestellt, ${write.day(at)}`,
    measured: ({ by, at }) => `${CAME[by]}, ${write.day(at)}`,
    noValue: NO_VALUE,
    facts: ({ found, service, low, high, interval, within, holds, other }) =>
      line([
        found === 'carried over' && 'über die Breite gefunden',
        service && 'muss in die Werkstatt',
        other !== null && `oder ${writeSteps(other)}`,
        low !== null && high !== null && `Band ${writeSteps(low)} bis ${writeSteps(high)}`,
        interval && `Mitte mit ${write.percent(0.95)} Sicherheit zwischen ${write.signed(interval.from, 1)} und ${write.signed(interval.to, 1)}`,
        within !== null && `zu ${write.chance(within)} sicher auf eine Stufe genau`,
        holds !== null && write.count(holds, HOLDS),
      ]),
    seeHolds: 'Jede Probe ansehen, Notiz hinzufügen',
    photographed: {
      ...shown,
      more: 'Ausschnitte ansehen oder löschen',
      crops: (both) => (both ? 'Bei 100\u00a0%: Livebild, dann Autofokus' : 'Bei 100\u00a0%'),
      noCrops: 'In diesem Browser gibt es keine Ausschnitte davon.',
      crop: { reference: 'Im Livebild scharfgestellt', shot: 'Mit Autofokus scharfgestellt' },
      eraseCrops: 'Ausschnitte löschen',
      erase: 'Aus dem Verlauf löschen',
    },
  },
  repeated: {
    title: (count) => `${write.number(count)} Durchläufe zusammen`,
    centre: ({ value, from, to }) =>
      `Mitte ${write.signed(value, 1)}, mit ${write.percent(0.95)} Sicherheit zwischen ${write.signed(from, 1)} und ${write.signed(to, 1)}.`,
    last: ({ apart, allowed, differ }) => [
      `Die letzten beiden liegen ${stepsOf(apart)} auseinander. Zufall erklärt bis zu ${stepsOf(allowed)}.`,
      differ ? 'Sie weichen stärker voneinander ab.' : 'Sie stimmen überein.',
    ],
    differ: 'Durchläufe weichen ab',
    scatter: ({ q, freedom, i2, tau2 }) => [
      `Streuung Q ${write.number(q, 1)} bei ${write.number(freedom)}.`,
      `${write.percent(i2)} davon sind mehr als Zufall.`,
      `Zwischen Durchläufen: ${stepsOf(Math.sqrt(tau2))}.`,
    ],
  },
  byHand: {
    open: 'Einen Wert von Hand eintragen',
    form: 'Von Hand',
    known: 'Was bekannt ist',
    is: { band: 'Beide Enden des Bandes', value: 'Nur der Wert in der Kamera' },
    one: 'Ein Ende',
    other: 'Anderes Ende',
    centre: (centre) => `Die Mitte ist ${write.signed(centre, 1)}.`,
    which: 'Zwei Werte liegen gleich nah an der Mitte. Welchen haben Sie genommen?',
    value: 'Wert jetzt',
    save: 'Wert speichern',
    saved: 'Im Logbuch gespeichert.',
    choice: writeSteps,
  },
};
