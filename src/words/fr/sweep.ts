// French: what a sweep under way shows.
import type { Care } from '../../sweep/care.ts';
import type { Plain, Word } from '../../sweep/inputs.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { SweepWords } from '../sweepWords.ts';
import { taught } from '../taught.ts';
import { drifted } from './drift.ts';
import { press } from './press.ts';
import { arrowsSaid, readBack, seen } from './verdict.ts';
import { write } from './write.ts';

const CARE: Readonly<Record<Care, string>> = { quick: 'rapide', standard: 'standard', thorough: 'approfondi' };

const HOLDS = { one: '# essai', other: '# essais' };

const WANTED = { centre: 'centre encore incertain', ends: 'deux extrémités à voir' } as const;

/** The word for it, where that is not its name. */
const WORD = { hold: 'holding', unmoved: 'same', moved: 'shifted' } as const satisfies Partial<Record<Plain, Word>>;

const told: SweepWords['heard']['told'] = (input) => {
  if ('heard' in input && input.heard !== null) return input.heard;
  switch (input.told) {
    case 'verdict':
      return readBack(input.verdict);
    case 'arrows':
      return arrowsSaid(input.arrows) ?? 'pas de flèches';
    case 'set':
      return `${taught('set')} ${writeSteps(input.value)}`;
    case 'press':
      return press.is[input.press];
    case 'hold':
    case 'unmoved':
    case 'moved':
      return taught(WORD[input.told]);
    default:
      return taught(input.told);
  }
};

const became: SweepWords['heard']['became'] = (event, hold) => {
  switch (event.did) {
    case 'began':
      return `essai à ${writeSteps(event.value)}`;
    case 'judged':
    case 'amended':
      return hold ? `${seen(hold.verdict)} à ${writeSteps(hold.value)}` : 'noté';
    case 'chose':
      return `réglez ${writeSteps(event.value)}`;
    case 'skipped':
      return 'passé';
    case 'undid':
      return 'annulé';
    case 'paused':
      return 'en pause';
    case 'resumed':
      return 'repris';
    case 'checked':
      return event.focus === 'unmoved' ? 'la mise au point est la même' : 'la mise au point a bougé';
    case 'went on':
      return 'on continue';
    case 'finished':
      return 'terminé';
    case 'opened':
    case 'ran':
    case 'unanswered':
    case 'cut off':
    case 'heard':
      return 'noté';
  }
};

export const words: SweepWords = {
  leave: 'Revenir à l’accueil. Le balayage attend.',
  leaveFarView: 'Quitter la vue de loin',
  setUp: 'Monter le banc',
  face: {
    label: 'Maintenant',
    hold: 'L’essai',
    value: { set: 'Valeur à régler', enter: 'Valeur à saisir' },
    caption: {
      dialling: 'Réglez',
      holding: 'Maintenez',
      judging: 'Temps écoulé',
      paused: 'En pause',
      checking: 'Vérifiez le point',
      turning: 'Décalez le point',
      enter: 'Saisissez',
      'past the limit': 'Limite dépassée',
      'beyond the scale': 'Hors plage',
      nothing: 'Jamais fixe',
    },
    thenPress: 'puis mi-course',
    thenWait: 'puis attendez le décompte',
    already: 'déjà réglé',
    way: (clicks, direction, from) =>
      direction === 'up' ? `montez de ${write.number(clicks)} depuis ${writeSteps(from)}` : `descendez de ${write.number(clicks)} depuis ${writeSteps(from)}`,
    left: (seconds) => ({ figure: write.number(seconds), unit: write.count(seconds, { one: 'seconde restante', other: 'secondes restantes' }) }),
    steady: 'Fixe ?',
    paused: 'le balayage attend',
    past: 'La bande dépasse la plage.',
    lies: { above: 'La bande est au-dessus de la plage.', below: 'La bande est au-dessous de la plage.' },
    centreAbout: (centre) => `Le centre est vers ${write.signed(centre, 1)}.`,
    toCheck: 'Acceptez pour voir ce qu’il faut vérifier.',
    news: { holding: 'Essai en cours.', judging: 'Le temps est écoulé. Le témoin était-il fixe ?' },
  },
  sure: (within) => `sûr à ${write.chance(within)}, à un pas près`,
  notYetSure: (within) => `sûr à ${write.chance(within)} seulement, à un pas près`,
  offer: {
    enough: (care, look) =>
      look
        ? `Suffisant pour un balayage ${CARE[care]}. Toujours net en visée écran ? Acceptez, ou continuez les essais.`
        : `Suffisant pour un balayage ${CARE[care]}. Acceptez, ou continuez les essais.`,
    asItStands: 'Acceptez, ou continuez les essais.',
    noMoreHolds: 'D’autres essais n’y changeront rien.',
    firstThis: 'Corrigez d’abord cela. D’autres essais seuls n’y changeront rien.',
  },
  standing: {
    anywhere: 'centre encore inconnu',
    near: (value, within) => `centre vers ${writeSteps(value)}, sûr à ${write.chance(within)}, à un pas près`,
    centre: (centre) => `centre ${write.signed(centre, 1)}`,
    holds: (made) => write.count(made, HOLDS),
    toCome: (made, all, wanted) => line([`${write.number(made)} sur environ ${write.count(all, HOLDS)}`, wanted && WANTED[wanted]]),
  },
  checkFocus: {
    title: 'Vérifiez le point',
    why: drifted,
    look: 'Ne touchez pas la bague. Regardez en visée écran : est-ce toujours net ?',
    lookAside: 'Ne touchez pas la bague. Regardez en visée écran : le flou est-il le même qu’avant ?',
  },
  turnFocus: {
    label: 'Décaler le point',
    title: { first: 'Décalez le point', further: 'Encore un peu', 'other way': 'Dans l’autre sens', back: 'Trop loin' },
    what: {
      first:
        'En visée écran, tournez un peu la bague, juste assez pour que la mire perde sa netteté. Le sens n’importe pas : les essais diront lequel est le bon.',
      further: 'C’était le bon sens. En visée écran, tournez encore un peu la bague.',
      'other way': 'La bande est plus loin qu’avant. Revenez au-delà du point net, jusqu’à perdre à peine la netteté de l’autre côté.',
      back: 'La bande dépasse de l’autre côté. Revenez à peu près à mi-chemin du point net.',
    },
    leaveIt: 'Ne touchez ensuite plus la bague jusqu’à la fin de ce balayage.',
    practice: 'Avec un vrai objectif, vous tourneriez la bague en visée écran, juste assez pour perdre la netteté. Le simulateur tourne la sienne.',
  },
  setValue: {
    title: 'Régler une autre valeur',
    value: 'Valeur',
    up: 'Un pas plus haut',
    down: 'Un pas plus bas',
    set: 'Régler',
    cancel: 'Fermer',
    offTheScale: ({ min, max, step }) =>
      step === 1
        ? `Indiquez un nombre entier de ${writeSteps(min)} à ${writeSteps(max)}.`
        : `Indiquez une valeur par pas de ${write.number(step)}, de ${writeSteps(min)} à ${writeSteps(max)}.`,
  },
  heard: { label: 'Entendu', none: 'Aucune réponse', told, became },
  understood: { answers: 'Réponses comprises maintenant', arrows: 'Flèches du dernier essai', asides: 'Compris aussi maintenant' },
  press,
  space: 'Espace',
  following: { label: 'Suivi', what: 'Une autre fenêtre mène ce balayage. Ici, vous pouvez seulement le suivre.', takeOver: 'Le reprendre ici' },
  strip: {
    label: 'Essais jusqu’ici',
    hold: ({ value, verdict }, counts) => `${writeSteps(value)} ${seen(verdict)} : ${counts === 'in' ? 'dans la bande' : 'hors bande'}`,
  },
};
