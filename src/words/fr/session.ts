// French: what the session itself has to say.
import { writeSteps } from '../../sweep/scale.ts';
import type { SessionWords } from '../sessionWords.ts';
import { pair, within } from './subject.ts';
import { write } from './write.ts';

export const words: SessionWords = {
  stored: {
    reading: (share) => `Lecture du carnet : ${write.percent(share)}.`,
    readAgain: 'Relire',
    tooNew: 'Les données présentes ici ont été écrites par un Sweepbook plus récent. Mettez celui-ci à jour. D’ici là, rien n’est modifié.',
    spoilt: (key, field, place) =>
      `Une donnée enregistrée sous « ${key} » est inutilisable${field === null ? '' : `, à cause de « ${field} »`}. ` +
      `Elle est gardée entière sous « ${place} », et tout le reste est utilisé sans elle.`,
    unread: 'Les données ne peuvent pas être lues pour l’instant. Réessayez.',
    notOnDisk: 'C’est affiché ici, mais pas encore sur le disque. Laissez ce panneau ouvert : il réessaie jusqu’à y parvenir.',
  },
  copies: {
    fault: {
      'copies unread': 'Les copies quotidiennes ne peuvent pas être lues. Les données n’en souffrent pas.',
      'copy unread': 'Cette copie ne peut pas être lue. Choisissez-en une autre.',
      'copy not kept': 'La copie du jour ne peut pas être gardée. Libérez de la place sur le disque. Le prochain démarrage réessaiera.',
    },
    offered: (at) => `Il n’y a plus de données ici, mais il existe une copie complète du ${write.dayAndTime(at)}.`,
    bringBack: 'La rétablir',
  },
  bringing: {
    brokenOff: 'L’import d’un carnet a été interrompu, tout est donc comme avant. Recommencez-le.',
    notCopied: 'Ce qui est ici n’a pas pu être copié d’abord : rien n’a donc été importé. Libérez de la place sur le disque, puis réessayez.',
    tooNew: 'Cette copie a été faite par un Sweepbook plus récent. Mettez celui-ci à jour, puis réessayez.',
  },
  sync: {
    fault: {
      'no sync':
        'La synchronisation du navigateur ne fonctionne pas pour l’instant : les dernières valeurs n’atteignent pas vos autres ordinateurs. Tout est gardé ici, et le panneau réessaie tant qu’il est ouvert.',
    },
    unread: 'Certaines valeurs d’un autre ordinateur ne peuvent pas être lues ici. Mettez Sweepbook à jour des deux côtés.',
    noRoom: 'La synchronisation du navigateur n’a plus de place pour les valeurs les plus anciennes. Elles sont gardées ici, et aussi dans une sauvegarde.',
    notTakenOut: 'Les valeurs de cet ordinateur n’ont pas pu être retirées de la synchronisation du navigateur.',
    tryAgain: 'Réessayer',
    overtaken: ({ value, old, more, ...subject }) => {
      const others = more === 0 ? '' : ` ${write.count(more, { one: '# autre est dans le même cas', other: '# autres sont dans le même cas' })}.`;
      return (
        `Un autre ordinateur a une valeur plus récente pour ${pair(subject)} : ${writeSteps(value)} au lieu de ${writeSteps(old)}.${others} ` +
        'Les deux restent dans l’historique. Vérifiez laquelle est dans l’appareil.'
      );
    },
  },
  erasing: {
    elsewhere: 'Un balayage est en cours dans une autre fenêtre. Effacez là-bas ce qui a été entendu, ou reprenez le balayage ici.',
    copiesUnread: 'Ce qui a été entendu est effacé, mais les copies quotidiennes ne peuvent pas être lues pour l’instant. Réessayez.',
    copyLeft: 'Ce qui a été entendu est effacé, mais il en reste dans une des copies quotidiennes. Réessayez.',
    notOnDisk: 'C’est effacé de l’écran, mais pas encore du disque. Laissez ce panneau ouvert : il réessaie jusqu’à y parvenir.',
  },
  proofs: {
    situationGone: 'Cette configuration n’est plus dans le matériel. Choisissez-en une autre, puis gardez de nouveau les chiffres.',
    unfit: 'Ces chiffres ne peuvent pas être gardés. Importez de nouveau les images.',
    gone: 'Ce contrôle par photos n’est plus dans le carnet.',
    copiesUnread: 'Les chiffres ne sont pas encore effacés, car les copies quotidiennes ne peuvent pas être lues pour l’instant. Réessayez.',
    copyLeft: 'Les chiffres ne sont pas encore effacés, car ils ne peuvent pas être retirés d’une des copies quotidiennes. Réessayez.',
    crops: {
      'crops unread': 'Les extraits ne peuvent pas être lus pour l’instant. Les chiffres n’en souffrent pas.',
      'crops not kept': 'Les chiffres sont gardés, mais il n’y a pas de place pour les extraits. Libérez de la place sur le disque.',
      'crops not erased': 'Les extraits ne peuvent pas être effacés pour l’instant. Réessayez.',
    },
  },
  byHand: (fault) => {
    switch (fault.is) {
      case 'ends off the scale':
        return `Indiquez les deux extrémités en corrections ${within(fault.scale)}.`;
      case 'off the scale':
        return `Indiquez une correction ${within(fault.scale)}.`;
      case 'outside the ends':
        return 'Choisissez une valeur entre les deux extrémités.';
    }
  },
  recordGone: 'Cette fiche n’est plus dans le carnet.',
  unexpected: (why) => `Un problème inattendu est survenu (${why}). Le balayage continue. Rien de ce qui a été noté n’est perdu.`,
  became: {
    'not here': 'non noté. Une autre fenêtre mène ce balayage. Reprenez-le ici pour le mener vous-même.',
    'asked back': 'à confirmer',
    'said again': 'répété',
    help: 'aide',
    'looked up': 'cherché',
    'not taken': 'non noté',
    'not clear': 'pas clair',
    'too late': 'non noté, car commencé avant cette étape',
  },
  farView: { on: 'oui', off: 'non' },
  missed: {
    'amid talk': 'non noté, car mêlé à une conversation. Redites-le.',
    'beside the panel': 'non noté, car le panneau parlait. Redites-le.',
  },
  untold: {
    noScale: 'Indiquez la plage de corrections par trois nombres entiers : de, à et pas.',
    noSweep: 'Ce balayage ne peut pas être modifié ici. Si une autre fenêtre le mène, reprenez-le d’abord ici.',
    holdFirst: 'Finissez d’abord cet essai, puis refaites ce changement.',
    offTheScale: (value) =>
      `${writeSteps(value)} a déjà été essayé et n’est pas dans cette plage. Annulez cet essai, ou choisissez une plage qui contient cette valeur.`,
    arrowsSeen: 'Les essais faits jusqu’ici comportent des flèches. Annulez d’abord ces essais, ou gardez les flèches.',
    kitGone: 'Cet élément n’est plus dans le matériel. Choisissez-en un autre.',
    resultGone: 'Ce résultat n’est plus dans le matériel. Cherchez-le dans le carnet.',
    missing: {
      body: 'Nommez d’abord le boîtier.',
      lens: 'Nommez d’abord l’objectif.',
      length: 'Indiquez aussi la focale, ou mettez-la dans le nom, par exemple « Corvid 85 ».',
    },
  },
  standIn: { body: 'Boîtier sans nom', lens: (opened) => `Objectif sans nom, ${write.dayAndTime(opened)}` },
  unplanned: {
    'kit gone': 'Ce boîtier, cet objectif ou cette distance n’est plus dans le matériel. Choisissez-en un autre.',
    'value off the scale': 'La valeur réglée actuellement sur le boîtier n’est pas dans sa plage. Indiquez de nouveau cette valeur.',
    'sweep not kept yet': 'Ce balayage n’est pas encore dans le carnet. Attendez un instant, puis réessayez.',
    'no width': 'Ce balayage n’a pas de largeur à reporter. Mesurez de nouveau la configuration.',
  },
  unbegun: {
    'under way': 'Un balayage est en cours. Terminez-le ou quittez-le d’abord.',
    'begun elsewhere': 'Une autre fenêtre vient de commencer un balayage. Terminez d’abord celui-là.',
  },
  practice: { body: 'Simulateur', lens: 'Objectif simulé' },
};
