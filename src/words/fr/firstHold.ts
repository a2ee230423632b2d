// French: a person's first holds.
import type { FirstHoldWords } from '../firstHoldWords.ts';

export const words: FirstHoldWords = {
  keys: {
    elsewhere: 'Le clavier agit sur la page : cliquez sur le panneau.',
    holdAtStake: 'Le temps est écoulé, mais le clavier agit sur la page : cliquez sur le panneau.',
    back: 'Le clavier agit de nouveau sur le panneau.',
  },
  asked: {
    short: 'A-t-il déjà clignoté ? Si oui, appuyez encore. Sinon, continuez de maintenir.',
    double: 'S’est-il déjà allumé en retard ? Si oui, refaites un double appui. Sinon, continuez de maintenir.',
    long: 'Est-il resté éteint ? Si oui, refaites un appui long. Sinon, continuez de maintenir.',
    kept: (undoable) => `Un appui bref commence l’essai ; ne maintenez ensuite que le déclencheur.${undoable ? ' Un double appui annule.' : ''}`,
  },
  keptDouble: 'appui long, puis double appui',
  coach: {
    label: 'Déroulement d’un essai',
    camera: 'Le déclencheur à mi-course allume le témoin : maintenez-le.',
    panel: 'Ce contacteur n’agit que sur le panneau : appuyez pour commencer, et en cas d’échec.',
    lights: 'Guettez l’un de ces cas pendant l’essai :',
    firstAloud: 'Un appui bref sur le contacteur pour commencer. Puis le déclencheur à mi-course, maintenu.',
    steps: {
      dialling: {
        now: 'Réglez cette valeur sur l’appareil.',
        press: 'Appuyez ensuite brièvement sur le contacteur, puis sur le déclencheur à mi-course, et maintenez-le.',
        aloud: 'Réglez-la, appuyez sur le contacteur, puis maintenez le déclencheur à mi-course.',
      },
      holding: {
        now: 'Maintenez le déclencheur à mi-course et observez le témoin.',
        press: 'N’appuyez ici que si le témoin ne tient pas :',
        aloud: null,
      },
      judging: {
        now: 'Le temps est écoulé : lâchez le déclencheur.',
        press: 'Si le témoin a tenu, un appui bref sur le contacteur. S’il n’a pas tenu, un appui long.',
        aloud: 'Appui bref si le témoin a tenu. Appui long sinon.',
      },
    },
  },
  lights: {
    title: 'Ce que peut faire le témoin',
    open: 'Les quatre états du témoin',
    close: 'Masquer les quatre états',
    does: { steady: 'S’allume aussitôt et tient.', late: 'S’allume en retard.', flicker: 'S’éteint, même une fois.', dark: 'Ne s’allume jamais.' },
    when: { steady: 'après le signal', late: 'pendant l’essai', flicker: 'pendant l’essai', dark: 'pendant l’essai' },
    after: 'après',
  },
  arrows: {
    title: 'Ce que peuvent faire les flèches',
    does: { left: 'Gauche seule.', right: 'Droite seule.', balanced: 'Les deux, égales.', lopsided: 'Les deux, inégales.' },
    counts: { in: 'un témoin fixe compte dedans', out: 'même un témoin fixe compte dehors' },
  },
};
