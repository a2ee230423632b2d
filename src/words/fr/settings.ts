// French: the settings.
import type { Settings, Theme } from '../../settings.ts';
import type { Pace } from '../../sweep/manner.ts';
import { line } from '../line.ts';
import type { Age, SettingsWords } from '../settingsWords.ts';
import { LISTENING_MEANS } from './listening.ts';
import { write } from './write.ts';

const PACED: Readonly<Record<Pace['set'], string>> = { own: 'rythme libre', counted: 'rythme compté' };
const LISTENS: Readonly<Record<Settings['voice']['listen'], string>> = {
  off: 'coupée',
  own: 'mes mots appris',
  here: 'le navigateur, sur cet ordinateur',
  browser: 'la reconnais\u00adsance du navigateur',
};
const LOOKS: Readonly<Record<Theme, string>> = { system: 'comme le système', light: 'clair', dark: 'sombre', dim: 'tamisé', red: 'rouge' };

const AGE: Readonly<Record<Age['in'], Parameters<typeof write.count>[1]>> = {
  months: { other: '# mois' },
  years: { one: '# an', other: '# ans' },
};
const age = ({ in: unit, count }: Age): string => write.count(count, AGE[unit]);

const UNITS = { m: 'mètres', ft: 'pieds' } as const;

export const words: SettingsWords = {
  title: 'Paramètres',
  find: {
    label: 'Chercher un paramètre',
    found: (count) => (count === 0 ? 'Aucun paramètre ne correspond. Essayez un autre mot.' : write.count(count, { one: '# trouvé', other: '# trouvés' })),
  },
  pages: { working: 'Travail', sound: 'Son', voice: 'Voix', look: 'Aspect', language: 'Langue', logbook: 'Carnet' },
  states: {
    working: (care, { holdTime, pace }) => line([care, write.unit(holdTime, 'second'), PACED[pace.set]]),
    sound: (speaks, tones) => line([speaks ? 'dit chaque valeur' : 'ne dit rien', tones ? 'signaux' : 'pas de signaux']),
    voice: (listen) => LISTENS[listen],
    look: (theme, far) => line([LOOKS[theme], far && 'vue de loin']),
    language: (screens, voice) => line([screens, voice !== null && `parlé : ${voice}`]),
    logbook: (after, carried) => line([after !== null && `à remesurer après ${age(after)}`, carried && 'partagé entre vos ordinateurs']),
  },
  working: {
    holdTime: (time) => `Durée de maintien : ${write.unit(time, 'second')}`,
    holdTimeNote: 'L’usage est de cinq secondes.',
    pace: 'Rythme',
    paces: {
      own: { label: 'Libre', note: 'Un appui ou un mot commence chaque essai.' },
      counted: { label: 'Compté', note: 'Le temps de régler, trois signaux, et l’essai commence.' },
    },
    toDial: (time) => `Temps de réglage : ${write.unit(time, 'second')}`,
    seconds: (time) => write.unit(time, 'second'),
  },
  shortcut: {
    title: 'Raccourci clavier qui ouvre le panneau',
    change: 'Changer le raccourci',
    where: 'Il se change sur la page des extensions du navigateur, derrière la roue dentée.',
  },
  sound: {
    speak: 'Dire chaque valeur',
    tones: { label: 'Signaux', note: 'Au début et à la fin d’un essai, et quand une réponse est notée ou refusée.' },
    rate: 'Débit de la voix',
    rates: { slow: 'lent', own: 'normal', brisk: 'soutenu', fast: 'rapide' },
    voice: 'Voix de synthèse',
    anyVoice: 'au choix de l’ordinateur',
  },
  look: {
    theme: 'Thème',
    themes: {
      system: { label: 'Comme le système' },
      light: { label: 'Clair' },
      dark: { label: 'Sombre' },
      dim: { label: 'Tamisé', note: 'Pour un studio sombre : rien ne brille.' },
      red: { label: 'Rouge', note: 'Du rouge seul, pour que vos yeux restent habitués à l’obscurité.' },
    },
    far: {
      label: 'Vue de loin',
      note: 'Un balayage remplit le panneau, pour être lu depuis le trépied. Le mot, sa touche ou un appui sur la valeur l’active ou la désactive aussi.',
    },
  },
  language: {
    screens: 'Langue de l’affichage',
    browser: (language) => `Celle du navigateur : ${language}`,
    voice: 'Parler et comprendre',
    asScreens: 'La langue de l’affichage',
    note: 'Un mot appris ne vaut que dans sa langue.',
    distances: 'Distances en',
    units: UNITS,
    asCountry: (unit) => `Selon l’usage du pays : ${UNITS[unit]}`,
  },
  again: {
    title: 'À remesurer',
    after: 'Une mesure est ancienne après',
    age,
  },
  backup: {
    title: 'Sauvegarde',
    remind: { label: 'Me rappeler la sauvegarde', note: 'Après cinq nouvelles fiches ou au bout de 30 jours. Désinstaller Sweepbook efface le carnet.' },
  },
  computers: {
    title: 'Vos autres ordinateurs',
    carry: {
      label: 'Partager les dernières valeurs entre eux',
      note:
        'Elles passent par votre compte du navigateur. Ce qui quitte cet ordinateur : la dernière valeur de chaque configuration, sa date, les noms du boîtier ' +
        'et de l’objectif, la focale et la distance. Les balayages, les notes et les numéros de série restent ici. Activez ce partage sur chacun d’eux. ' +
        'Si vous le désactivez, les valeurs de cet ordinateur sont retirées du compte.',
    },
  },
  listening: {
    title: 'Voix',
    by: 'Reconnaître mes mots',
    recognisers: {
      off: { label: 'Non', note: 'Les touches, la pédale et le pointeur font tout.' },
      own: { label: 'D’après mes mots appris', note: 'Rien ne quitte cet ordinateur. L’apprentis\u00adsage se fait dans le test d’écoute.' },
      here: { label: 'Par le navigateur, sur cet ordinateur seulement', note: 'Seulement là où le navigateur est prêt. Rien n’est téléchargé.' },
      browser: { label: 'Par la reconnais\u00adsance vocale du navigateur', note: LISTENING_MEANS },
    },
    noRecogniser: 'Ce navigateur n’a pas de reconnais\u00adsance vocale.',
    open: 'Écouter',
    openings: {
      always: { label: 'Pendant un balayage' },
      pressed: {
        label: 'Quand j’appuie sur le contacteur',
        note: 'Pour les pièces bruyantes. Maintenez le contacteur ou appuyez brièvement, puis parlez. Il ne sert alors à rien d’autre.',
      },
    },
    learn: {
      label: 'Retenir les mots justes à l’usage',
      note: 'Un mot noté et non annulé aide à le reconnaître dès le balayage suivant. Le test d’écoute permet d’oublier ce qui a été retenu.',
    },
    check: 'Test d’écoute : micro, bruit et apprentis\u00adsage de vos mots',
    kept: 'Les mots entendus pendant un balayage sont gardés avec ses essais, dans ce navigateur et dans les sauvegardes. Le son n’est jamais gardé.',
    erase: 'Effacer les mots entendus',
    erased: 'Ce qui a été entendu est effacé. Les essais et les réponses sont tous là.',
  },
};
