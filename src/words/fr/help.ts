// French: the help.
import type { HelpWords } from '../helpWords.ts';
import { correctionSaid, taught } from '../taught.ts';

export const words: HelpWords = {
  title: 'Aide',
  about:
    'Le panneau donne une valeur. Réglez-la sur l’appareil, appuyez à mi-course et observez le témoin de mise au point pendant toute la durée de maintien. ' +
    'Dites ce que vous avez vu. Le panneau trouve le milieu des valeurs auxquelles le témoin est fixe.',
  now: {
    title: 'Possible maintenant',
    start: 'Nommer un objectif et démarrer',
    practice: 'Simulateur',
    bench: 'Monter le banc',
    goOn: 'Continuer le balayage',
    watch: 'Suivre le balayage de l’autre fenêtre',
  },
  lights: {
    title: 'Ce que dit le témoin',
    light: 'Témoin',
    counts: 'Compte',
    is: {
      steady: { seen: 'S’est allumé aussitôt, sans coupure', counts: 'dedans' },
      late: { seen: 'S’est allumé en retard', counts: 'dehors, près' },
      flicker: { seen: 'S’est éteint, même une fois', counts: 'dehors' },
      dark: { seen: 'Ne s’est jamais allumé', counts: 'dehors, loin' },
      untold: { seen: 'N’a pas tenu', counts: 'dehors' },
    },
    note:
      'Un petit triangle à côté d’un signe est une flèche du viseur. Un témoin fixe avec une seule flèche compte dehors. ' +
      'Le témoin n’est compté fixe que si l’essai est allé à son terme.',
  },
  spoken: {
    title: 'Mots et touches',
    say: 'Dites',
    means: 'Signifie',
    key: 'Touche',
    get set() {
      return `${taught('set')} ${correctionSaid(6)}`;
    },
    meanings: {
      solid: 'le témoin était fixe',
      delayed: 'il s’est allumé en retard',
      flicker: 'il a clignoté',
      nothing: 'il est resté éteint',
      left: 'flèche gauche',
      right: 'flèche droite',
      balanced: 'flèches égales',
      lopsided: 'flèches inégales',
      holding: 'commence l’essai',
      undo: 'annule ce qui précède',
      repeat: 'fait redire',
      pause: 'le balayage attend',
      resume: 'le balayage reprend',
      skip: 'laisse cette valeur de côté',
      accept: 'prend ce qui est proposé',
      'go on': 'fait d’autres essais avant la fin',
      set: 'règle une valeur de votre choix',
      same: 'la mise au point est la même',
      shifted: 'la mise au point a bougé',
      finish: 'termine le balayage en l’état',
      help: 'dit ce que vous pouvez dire',
      'far view': 'remplit le panneau, ou le montre de nouveau en entier',
      entered: 'marque la valeur comme saisie',
      next: 'objectif suivant, ou étape suivante',
      back: 'étape précédente',
    },
    get together() {
      return `Vous pouvez dire ensemble le témoin et une flèche : « ${taught('flicker')} ${taught('left')} ».`;
    },
  },
  presses: {
    title: 'Le contacteur',
    about:
      'Le grand bouton est le contacteur. Espace, Entrée, Page suivante et Page précédente aussi, comme une pédale ou une télécommande qui envoie l’une de ces touches.',
    how: {
      short: 'un appui',
      double: 'deux appuis rapides',
      long: 'un appui de plus d’une demi-seconde',
      'kept, double': 'un appui long, qui commence un essai, puis deux appuis rapides',
    },
    when: {
      dialling: 'Pendant le réglage',
      holding: 'Pendant l’essai',
      judging: 'Après le signal de fin',
      offered: 'Quand le panneau propose de terminer',
      paused: 'En pause',
      checking: 'À la question sur la mise au point',
      turning: 'Quand il faut décaler la mise au point',
      finished: 'Au résultat',
    },
  },
  before: {
    title: 'Avant de commencer',
    steps: [
      'Placez la mire bien parallèle au capteur, éclairée régulièrement.',
      'Faites une mise au point rigoureuse en visée écran, à pleine ouverture. Passez ensuite l’objectif en manuel et ne touchez plus la bague.',
      'Si le boîtier fait le point au bouton arrière, maintenez ce bouton au lieu du déclencheur.',
    ],
    manual: 'Si le mode d’emploi de votre appareil dit autre chose, suivez-le.',
  },
};
