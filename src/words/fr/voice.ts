// French: what the microphone mark and the voice sheet say, and what is said of a deaf ear.
import { voiceNamed } from '../named.ts';
import { taught } from '../taught.ts';
import type { VoiceWords } from '../voiceWords.ts';
import { words as first } from './first.ts';
import { write } from './write.ts';

/** « l’anglais », « le français ». */
const theVoice = (): string => {
  const name = voiceNamed('fr');
  return /^[aeiouyéèh]/i.test(name) ? `l’${name}` : `le ${name}`;
};

export const words: VoiceWords = {
  mark: {
    off: first.mark.word,
    ready: 'voix active',
    begun: 'à configurer',
    asking: 'demande',
    opening: 'ouverture',
    listening: 'à l’écoute',
    speaking: 'parle',
    'opens when pressed': 'appuyer',
  },
  markDeaf: {
    'no microphone': 'sans micro',
    'not asked': 'non autorisé',
    blocked: 'micro bloqué',
    'in use': 'micro occupé',
    muted: 'micro coupé',
    silent: 'micro muet',
    'no service': 'sans service',
    'no network': 'sans réseau',
    'no recogniser': 'à apprendre',
    'not on this computer': 'pas prête',
    'to be downloaded': 'à charger',
    'being downloaded': 'chargement',
    'not usable': 'inutilisable',
    'no language': 'sans langue',
    'no words': 'aucun mot',
    'words unreadable': 'réapprendre',
    'no sound': 'aucun son',
    'held back': 'une touche',
    'another window': 'ailleurs',
    unread: 'à rouvrir',
  },
  markSilent: { mute: 'panneau muet', off: 'son coupé' },
  marked: (shown, press) => `${shown.join(' ')} : ${press}`,
  means: {
    off: 'La voix est coupée.',
    ready: 'La voix est active et le panneau écoute pendant un balayage.',
    begun: 'La voix reste coupée tant qu’elle n’est pas configurée.',
    asking: 'Le navigateur demande si le micro peut être utilisé.',
    opening: 'Le micro s’ouvre.',
    listening: 'À l’écoute.',
    speaking: 'Le panneau parle, et n’écoute pas pendant ce temps.',
    'opens when pressed': 'Le panneau écoute quand vous appuyez sur le contacteur.',
  },
  deaf: {
    'no microphone': 'Aucun micro ne répond. Branchez-en un. L’écoute commence alors d’elle-même.',
    'not asked': 'Le navigateur n’a pas encore autorisé le micro. Autorisez-le. L’écoute commence alors d’elle-même.',
    blocked: 'Le micro est bloqué pour Sweepbook. La page du micro montre comment l’autoriser de nouveau.',
    'in use': 'Le micro ne peut pas être ouvert, car un autre programme l’utilise. Fermez ce programme. L’écoute commence alors d’elle-même.',
    muted: 'Le micro est coupé. Réactivez-le par son bouton ou dans les paramètres de son du système.',
    silent: 'Aucun son ne vient du micro. Allumez-le, ou choisissez-en un autre dans le navigateur ou le système. L’écoute commence alors d’elle-même.',
    'no service':
      'La reconnais\u00adsance vocale du navigateur ne répond pas. Vérifiez le réseau, ou apprenez vos propres mots au panneau. Elle réessaie d’elle-même.',
    'no network':
      'Le réseau est coupé, et la reconnais\u00adsance vocale du navigateur en a besoin. Les touches fonctionnent toujours. L’écoute reprend d’elle-même avec le réseau.',
    'no recogniser': 'Ce navigateur n’a pas de reconnais\u00adsance vocale. Apprenez plutôt vos propres mots au panneau.',
    'not on this computer':
      'Le navigateur n’a pas de reconnais\u00adsance vocale prête sur cet ordinateur. Apprenez vos propres mots au panneau, ou choisissez la reconnais\u00adsance vocale du navigateur, qui peut envoyer le son ailleurs.',
    'to be downloaded': 'Le navigateur pourra reconnaître les mots sur cet ordinateur une fois qu’il aura téléchargé ce qu’il faut.',
    'being downloaded': 'Le navigateur télécharge ce qu’il faut pour reconnaître les mots sur cet ordinateur. L’écoute commence alors d’elle-même.',
    'not usable':
      'Le navigateur n’autorise pas sa reconnais\u00adsance vocale ici. Autorisez-la dans les paramètres du navigateur, ou apprenez plutôt vos propres mots au panneau.',
    get 'no language'() {
      return `La reconnais\u00adsance vocale du navigateur ne connaît pas ${theVoice()} ici. Apprenez plutôt vos propres mots au panneau.`;
    },
    'no words': 'Aucun mot n’est encore appris. Apprenez au panneau les sept mots d’un balayage.',
    'words unreadable': 'Les mots appris ne peuvent pas être lus. Refaites leur apprentis\u00adsage dans le test d’écoute.',
    'no sound': 'Ce navigateur ne transmet pas le son du micro. Les touches, la pédale et le pointeur font tout.',
    'held back': 'Le navigateur retient le son du micro tant que vous n’avez pas touché le panneau. Appuyez sur une touche ou cliquez une fois.',
    'another window': 'Une autre fenêtre écoute. Fermez-la, ou écoutez plutôt ici.',
    unread: 'Une partie du panneau ne peut pas être lue. Fermez le panneau et rouvrez-le. Rien n’est perdu.',
  },
  deafSaid: {
    'no microphone': 'Je n’entends pas : pas de micro.',
    'not asked': 'Je n’entends pas : le micro n’est pas autorisé.',
    blocked: 'Je n’entends pas : le micro est bloqué.',
    'in use': 'Je n’entends pas : un autre programme utilise le micro.',
    muted: 'Je n’entends pas : le micro est coupé.',
    silent: 'Je n’entends pas : le micro est muet.',
    'no service': 'Je n’entends pas : la reconnais\u00adsance ne répond pas.',
    'no network': 'Je n’entends pas : le réseau est coupé.',
    'no recogniser': 'Je n’entends pas : ce navigateur n’a pas de reconnais\u00adsance vocale.',
    'not on this computer': 'Je n’entends pas : la reconnais\u00adsance n’est pas prête sur cet ordinateur.',
    'to be downloaded': 'Je n’entends pas : la reconnais\u00adsance n’est pas téléchargée.',
    'being downloaded': 'Je n’entends pas encore : la reconnais\u00adsance se télécharge.',
    'not usable': 'Je n’entends pas : la reconnais\u00adsance n’est pas autorisée ici.',
    get 'no language'() {
      return `Je n’entends pas : la reconnais\u00adsance ne connaît pas ${theVoice()}.`;
    },
    'no words': 'Je n’entends pas : aucun mot n’est appris.',
    'words unreadable': 'Je n’entends pas : les mots appris sont illisibles.',
    'no sound': 'Je n’entends pas : le navigateur ne transmet pas le son.',
    'held back': 'Je n’entendrai qu’après une touche.',
    'another window': 'Une autre fenêtre écoute.',
    unread: 'Je n’entends pas. Rouvrez le panneau.',
  },
  hearsAgain: 'Je vous entends de nouveau.',
  press: {
    sheet: 'Ouvrir la voix',
    allow: 'Autoriser le micro',
    page: 'Ouvrir la page du micro',
    teach: 'Apprendre vos mots',
    here: 'Écouter ici',
  },
  goes: {
    browser:
      'Vos mots sont reconnus par la reconnais\u00adsance vocale du navigateur, et il se peut que son éditeur envoie le son à l’un de ses serveurs. ' +
      'Sweepbook lui-même ne garde aucun son et n’en envoie aucun.',
    here: 'Vos mots sont reconnus par le navigateur sur cet ordinateur. Aucun son n’en sort, aucun n’est gardé.',
    own: 'Sur cet ordinateur, vos mots sont comparés à ceux que vous avez appris au panneau. Aucun son n’en sort, aucun n’est gardé.',
  },
  sheet: {
    title: 'Voix',
    get offered() {
      return `Dites « ${taught('holding')} », « ${taught('solid')} », « ${taught('flicker')} » au lieu d’appuyer sur des touches. Les touches, la pédale et le pointeur fonctionnent toujours.`;
    },
    allow: 'Autoriser',
    allowAndTeach: 'Autoriser, puis apprendre sept mots',
    download: 'Télécharger',
    downloadInstead: 'Laisser plutôt le navigateur télécharger sa reconnais\u00adsance vocale : aucun son ne quitte cet ordinateur',
    downloading: 'Téléchargement',
    notDownloaded: 'Le téléchargement a échoué. Vérifiez le réseau et la place libre, puis réessayez.',
    teachInstead: 'Apprendre plutôt sept mots : aucun son ne quitte cet ordinateur',
    asking: 'Le navigateur demande si Sweepbook peut utiliser le micro. Répondez « Autoriser ». La suite vient d’elle-même.',
    once: 'Si vous l’autorisez pour cette fois seulement, laissez cet onglet ouvert pendant le travail : l’autorisation cesse avec lui.',
    askAgain: 'Redemander',
    refused: 'Le micro est bloqué pour Sweepbook : la voix reste coupée. Rien d’autre ne change.',
    howToUnblock: 'Montrer comment l’autoriser',
    leaveOff: 'Laisser coupée',
    on: 'Voix active.',
    get trial() {
      return `Essayez-la si vous voulez : dites « ${taught('solid')} ».`;
    },
    heard: (word: string) => `Entendu : « ${word} ».`,
    get begin() {
      return `Commencez ci-dessous, puis dites « ${taught('holding')} ».`;
    },
    get toSweep() {
      return `Retour au balayage, puis dites « ${taught('resume')} »`;
    },
    switchOff: 'Couper la voix',
    checkHearing: 'Test d’écoute : bruit et apprentis\u00adsage de vos mots',
    again: 'Réessayer',
    teach: (taughtWords: number, of: number) =>
      `${write.count(taughtWords, { one: `# mot sur ${of} est appris`, other: `# mots sur ${of} sont appris` })}. Chacun se dit cinq fois, moins de deux minutes en tout. La suite vient d’elle-même.`,
    lesson: (said) => said.map((word) => `« ${word} »`).join(', '),
    openLesson: 'Apprendre les sept mots',
  },
};
