// French: one situation of the logbook.
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { seconds } from '../../units.ts';
import { line } from '../line.ts';
import type { SituationWords } from '../situationWords.ts';
import { driftTold } from './monthsOfDrift.ts';
import { shown } from './proved.ts';
import { write } from './write.ts';

const CAME: Readonly<Record<Measured['by'], string>> = {
  sweep: 'trouvé par un balayage',
  'by hand': 'noté à la main',
  'from a table': 'venu d’un tableau',
  'from another computer': 'venu d’un autre ordinateur',
};

const NO_VALUE: Readonly<Record<Measured['found'], string>> = {
  band: 'sans valeur',
  value: 'sans valeur',
  'carried over': 'hors plage',
  'past the limit': 'limite dépassée',
  'beyond the scale': 'hors plage',
  nothing: 'sans bande',
};

/** So many of the newest values stand in one line. */
const NEWEST = 6;

const HOLDS = { one: '# essai', other: '# essais' };

/** A length on the range of corrections, to a tenth. */
const stepsOf = (value: number): string => write.count(value, { other: '# pas' }, 1);

const SURE = `sûr à ${write.percent(0.95)}`;

export const words: SituationWords = {
  gone: 'Cette configuration n’est plus dans le carnet.',
  lastValue: 'Dernière valeur',
  value: 'Valeur à utiliser',
  dueAgain: 'À remesurer',
  toEnter: 'Que saisir pour cet objectif',
  photographs: 'Contrôler par photos',
  recheck: 'Vérification rapide',
  anew: 'Remesurer',
  measure: 'Mesurer',
  answer: {
    sure: ({ by, chosen, within }, value) => {
      if (by !== 'sweep') return CAME[by];
      if (within === null) return '';
      const sure = `sûr à ${write.chance(within)}, à un pas près`;
      return chosen === null || chosen === value ? sure : `${writeSteps(chosen)} : ${sure}`;
    },
    before: (measured) => {
      const values = measured.map(({ chosen, found }) => (chosen === null ? NO_VALUE[found] : writeSteps(chosen)));
      const newest = values.length > NEWEST ? ['\u2026', ...values.slice(-NEWEST)] : values;
      const since = measured[0] ? ` depuis ${write.monthAndYear(measured[0].at)}` : '';
      return `Mesuré ${write.count(measured.length, { other: '# fois' })}${since} : ${newest.join(', ')}`;
    },
    notDue: 'Pas encore à remesurer.',
    moreReasons: (count) => write.count(count, { one: 'Une autre raison', other: '# autres raisons' }),
  },
  rooms: {
    evidence: 'Données',
    kept: ({ measured, entries, proofs }) =>
      line([
        measured.length > 0 && write.count(measured.length, { one: '# mesure', other: '# mesures' }),
        entries.length > 0 && write.count(entries.length, { one: '# saisie', other: '# saisies' }),
        proofs.length > 0 && write.count(proofs.length, { one: '# contrôle par photos', other: '# contrôles par photos' }),
      ]) || 'rien encore',
    entering: 'Saisie',
    inCamera: (value) => (value === null ? 'pas encore de saisie' : `${writeSteps(value)} est dans l’appareil`),
    others: 'Autres configurations de cet objectif',
    situations: (count) => write.count(count, { one: '# configuration', other: '# configurations' }),
    figures: 'Chiffres',
  },
  figures: ({ low, high, centre, interval, within, holds, seconds: taken }) => [
    ...(low !== null && high !== null ? [{ what: 'Bande', is: `${writeSteps(low)} à ${writeSteps(high)}` }] : []),
    ...(centre !== null ? [{ what: 'Centre', is: write.signed(centre, 1) }] : []),
    ...(interval ? [{ what: `Centre, ${SURE}`, is: `${write.signed(interval.from, 1)} à ${write.signed(interval.to, 1)}` }] : []),
    ...(within !== null ? [{ what: 'À un pas près', is: `sûr à ${write.chance(within)}` }] : []),
    ...(holds !== null ? [{ what: 'Essais', is: write.number(holds) }] : []),
    ...(taken !== null ? [{ what: 'Durée', is: write.duration(seconds(taken)) }] : []),
  ],
  retire: 'Retirer cette configuration',
  bringBack: 'Remettre cette configuration en service',
  history: {
    title: 'Historique',
    none: 'Rien n’a encore été mesuré, saisi ni photographié ici.',
    chart: `Ronds : mesuré, avec l’intervalle à ${write.percent(0.95)}. Carrés : saisi dans l’appareil.`,
    chartWithDrift: `Ronds : mesuré, avec l’intervalle à ${write.percent(0.95)}. Ombré : où peut être la dérive, ${SURE}. Carrés : saisi dans l’appareil.`,
    drifted: driftTold,
    entered: ({ at }) => `saisi dans l’appareil, ${write.day(at)}`,
    measured: ({ by, at }) => `${CAME[by]}, ${write.day(at)}`,
    noValue: NO_VALUE,
    facts: ({ found, service, low, high, interval, within, holds, other }) =>
      line([
        found === 'carried over' && 'trouvé par la largeur',
        service && 'à faire réviser',
        other !== null && `ou ${writeSteps(other)}`,
        low !== null && high !== null && `bande ${writeSteps(low)} à ${writeSteps(high)}`,
        interval && `centre entre ${write.signed(interval.from, 1)} et ${write.signed(interval.to, 1)}, ${SURE}`,
        within !== null && `sûr à ${write.chance(within)}, à un pas près`,
        holds !== null && write.count(holds, HOLDS),
      ]),
    seeHolds: 'Voir chaque essai, ou ajouter une note',
    photographed: {
      ...shown,
      more: 'Voir ses extraits, ou l’effacer',
      crops: (both) => (both ? `À ${write.percent(1)} : visée écran, puis autofocus` : `À ${write.percent(1)}`),
      noCrops: 'Aucun extrait n’en est gardé dans ce navigateur.',
      crop: { reference: 'Point fait en visée écran', shot: 'Point fait par l’autofocus' },
      eraseCrops: 'Effacer les extraits',
      erase: 'L’effacer de l’historique',
    },
  },
  repeated: {
    title: (count) => `${write.number(count)} balayages ensemble`,
    centre: ({ value, from, to }) => `Centre ${write.signed(value, 1)}, entre ${write.signed(from, 1)} et ${write.signed(to, 1)}, ${SURE}.`,
    last: ({ apart, allowed, differ }) => [
      `Les deux derniers diffèrent de ${stepsOf(apart)}. Le hasard explique jusqu’à ${stepsOf(allowed)}.`,
      differ ? 'L’écart est plus grand que cela.' : 'Ils concordent.',
    ],
    differ: 'les balayages diffèrent',
    scatter: ({ q, freedom, i2, tau2 }) => [
      `Dispersion Q ${write.number(q, 1)} pour ${write.count(freedom, { one: '# degré de liberté', other: '# degrés de liberté' })}.`,
      `Le hasard n’en explique pas ${write.percent(i2)}.`,
      `Entre balayages : ${stepsOf(Math.sqrt(tau2))}.`,
    ],
  },
  byHand: {
    open: 'Noter une valeur à la main',
    form: 'À la main',
    known: 'Ce qui est connu',
    is: { band: 'Les deux extrémités de la bande', value: 'Seulement la valeur actuelle de l’appareil' },
    one: 'Une extrémité',
    other: 'L’autre extrémité',
    centre: (centre) => `Le centre est ${write.signed(centre, 1)}.`,
    which: 'Deux valeurs sont aussi proches du centre. Laquelle avez-vous prise ?',
    value: 'Valeur actuelle',
    save: 'Enregistrer la valeur',
    saved: 'Enregistré dans le carnet.',
    choice: writeSteps,
  },
};
