// German: whose sweep it is.
import { writeSteps } from '../../sweep/scale.ts';
import { byUnit } from '../countryInUse.ts';
import { line } from '../line.ts';
import type { Part, ToldWords } from '../toldWords.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const PARTS: Readonly<Record<Part, string>> = {
  body: 'Gehäuse',
  lens: 'Objektiv',
  length: 'Brennweite',
  distance: 'Entfernung',
  scale: 'Bereich',
  more: 'Mehr',
};

export const words: ToldWords = {
  line: 'Worum es im Durchlauf geht',
  parts: PARTS,
  open: (part) => `${PARTS[part]}: noch nicht angegeben`,
  is: (part, value) => `${PARTS[part]}: ${value}`,
  chip: {
    lens: (lens, converter) => (converter === null ? lens : `${lens} + ${converter}`),
    length: write.millimetres,
    distance: (length) => write.distance(length),
    scale: ({ min, max, step }) => (step === 1 ? `${writeSteps(min)}…${writeSteps(max)}` : `${writeSteps(min)}…${writeSteps(max)}, je ${write.number(step)}`),
    all: line,
  },
  done: 'Fertig',
  fewer: 'Schließen',
  body: { choose: 'Gehäuse', another: 'Anderes Gehäuse …', name: 'Name des Gehäuses', hint: 'So, wie Sie es nennen.' },
  lens: { choose: 'Objektiv', another: 'Anderes Objektiv …', name: 'Name des Objektivs', hint: 'Mit Brennweite, zum Beispiel „Corvid 85“.' },
  length: {
    field: 'Brennweite, mm',
    hint: 'Wie auf dem Objektiv graviert.',
    converted: 'Wie auf dem Objektiv graviert, ohne Konverter.',
    ends: 'Welches Ende des Zooms?',
  },
  distance: {
    get field() {
      return byUnit({ m: 'Entfernung zur Tafel,\u00a0m', ft: 'Entfernung zur Tafel,\u00a0ft' });
    },
    hint: 'Nehmen Sie die Entfernung, aus der Sie fotografieren. Bleibt das Feld leer, sind es 50 Brennweiten, wie allgemein üblich.',
  },
  scale: { legend: 'Korrektur\u00adbereich', from: 'Von', to: 'bis', step: 'Stufe' },
  arrows: {
    label: 'Pfeile neben dem Fokuslicht',
    is: {
      absent: 'Keine Pfeile',
      'right-is-up': 'Pfeil rechts: höher, Richtung +',
      'right-is-down': 'Pfeil rechts: tiefer, Richtung \u2212',
    },
  },
  converter: { label: 'Konverter', none: 'Keiner' },
  subject: (subject) => ({ lens: subject.lens, details: line([place(subject), subject.body]) }),
  unnamed: ({ lens, body, focalLength }) => ({
    lens: lens?.name ?? 'Noch ohne Namen',
    details: line([focalLength !== null && write.millimetres(focalLength), body?.name ?? null]) || 'Benennen Sie es, bevor Sie das Ergebnis verlassen',
  }),
  whose: {
    title: 'Wozu gehört das Ergebnis?',
    body: 'Gehäuse',
    lens: 'Objektiv, mit Brennweite',
    length: 'Brennweite, mm',
    hint: 'Zum Beispiel „Corvid 85 f/1,8“.',
    ends: 'Welches Ende des Zooms war es?',
    keep: 'Unter diesem Namen ablegen',
    later: 'Es bleibt auch ohne Namen erhalten. Sie können es später benennen.',
    missing: {
      body: 'Nennen Sie auch das Gehäuse.',
      lens: 'Nennen Sie das Objektiv.',
      length: 'Geben Sie die Brennweite an oder schreiben Sie sie in den Namen des Objektivs.',
    },
  },
};
