// French: what is said of a word that is being taught.
import type { TakeFault } from '../../voice/ownWords/takeQuality.ts';
import type { TakeWords } from '../takeWords.ts';

function fault(word: string, found: TakeFault): string {
  switch (found.is) {
    case 'too long':
      return `C’était trop long pour un seul mot. Dites seulement « ${word} », avec du silence avant et après.`;
    case 'not heard':
      return `Rien n’a été entendu. Rapprochez-vous et redites « ${word} ».`;
    case 'too loud':
      return `C’était trop fort pour le micro. Redites « ${word} » de plus loin.`;
    case 'cut off':
      return `Le mot a été coupé. Attendez le repère, dites « ${word} », puis gardez le silence.`;
    case 'too short':
      return `C’était trop court pour « ${word} ». Redites-le.`;
    case 'too quiet':
      return `« ${word} » se détachait à peine du bruit. Rapprochez-vous, parlez plus fort ou coupez le ventilateur, et redites-le.`;
    case 'too like another word':
      return `Cela ressemblait plus à « ${found.other} » qu’à « ${word} ». Redites-le, ou choisissez un autre mot.`;
    case 'unlike the other takes':
      return `Cela ne ressemblait pas à vos autres prises de « ${word} ». Dites-le comme vous le direz près de l’appareil.`;
  }
}

export const words: TakeWords = {
  good: 'Bien.',
  fault,
  heard: {
    good: 'On vous entend bien.',
    enough: 'On vous entend, mais certains mots seront peut-être redemandés. Plus près, ce serait mieux.',
    'too faint': 'La pièce est trop bruyante pour cette distance. Rapprochez-vous, ou utilisez le contacteur.',
  },
};
