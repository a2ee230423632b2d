// French: one sweep of the logbook.
import type { Light } from '../../sweep/verdict.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { RecordWords } from '../recordWords.ts';
import { place } from './subject.ts';
import { ARROWS_SEEN } from './verdict.ts';
import { write } from './write.ts';

const LIGHT: Readonly<Record<Light, string>> = {
  steady: 'le témoin était fixe',
  late: 'le témoin s’est allumé en retard',
  flicker: 'le témoin a clignoté',
  dark: 'le témoin est resté éteint',
  untold: 'le témoin n’a pas tenu',
};

const COUNTS = { in: 'Compte dans la bande.', out: 'Compte hors bande.' } as const;

const between = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? `à ${write.signed(from, 1)}` : `entre ${write.signed(from, 1)} et ${write.signed(to, 1)}`;

export const words: RecordWords = {
  title: 'Carnet',
  gone: 'Cette fiche n’est plus dans le carnet.',
  details: (subject, finished) => line([place(subject), subject.body, write.day(finished)]),
  bench: 'Le banc',
  conditions: {
    open: (noted) => (noted ? 'Modifier la lumière, la température ou la note' : 'Noter la lumière, la température, etc.'),
    form: 'Conditions',
    save: 'Enregistrer avec ce balayage',
    saved: 'Enregistré.',
  },
  replay: {
    open: 'Revoir essai par essai',
    title: 'Revoir',
    at: (step, last) => `Étape ${write.number(step)} sur ${write.number(last)}`,
    earlier: 'Précédente',
    later: 'Suivante',
    play: 'Lecture',
    halt: 'Pause',
    sure: (interval) => `Le centre est ${between(interval)}, sûr à ${write.percent(0.95)}.`,
    narrowing: (first, last) =>
      `Comment l’incertitude s’est resserrée : le centre était ${between(first)} avant le premier essai, et ${between(last)} à la fin.`,
    opened: 'Avant le premier essai.',
    held: ({ number, value, light, arrows, counts }) => {
      const beside = ARROWS_SEEN[arrows];
      const seen = beside === null ? LIGHT[light] : `${LIGHT[light]}, ${beside}`;
      const hold = `Essai ${write.number(number)} à ${writeSteps(value)} : ${seen}.`;
      return light === 'untold' ? hold : `${hold} ${COUNTS[counts]}`;
    },
    takenBack: (left) => `Annulé. ${left === 0 ? 'Il ne reste aucun essai' : write.count(left, { one: 'Il reste # essai', other: 'Il reste # essais' })}.`,
    begunAfresh: 'La mise au point avait bougé : le balayage a recommencé à neuf.',
    ended: 'La fin du balayage.',
    checking: 'Les essais se contredisaient : le balayage vous a demandé de vérifier la mise au point.',
    turning: 'Le balayage vous a demandé de décaler la mise au point.',
    offered: 'Le balayage a proposé de terminer.',
    next: (value, why) => `Valeur suivante ${writeSteps(value)} : ${why}.`,
  },
};
