// Spanish: what is said of a word that is being taught.
import type { TakeFault } from '../../voice/ownWords/takeQuality.ts';
import type { TakeWords } from '../takeWords.ts';

function fault(word: string, found: TakeFault): string {
  switch (found.is) {
    case 'too long':
      return `Ha sido demasiado largo para una palabra. Diga solo «${word}», con silencio antes y después.`;
    case 'not heard':
      return `No se ha oído nada. Acérquese y diga otra vez «${word}».`;
    case 'too loud':
      return `Ha sido demasiado fuerte para el micrófono. Diga otra vez «${word}» desde más lejos.`;
    case 'cut off':
      return `La palabra se ha cortado. Espere la señal, diga «${word}» y guarde silencio después.`;
    case 'too short':
      return `Ha sido demasiado corto para «${word}». Dígalo otra vez.`;
    case 'too quiet':
      return `«${word}» apenas destacaba del ruido. Acérquese, hable más alto o apague el ventilador, y dígalo otra vez.`;
    case 'too like another word':
      return `Ha sonado más a «${found.other}» que a «${word}». Dígalo otra vez o elija otra palabra.`;
    case 'unlike the other takes':
      return `No se ha parecido a sus otras muestras de «${word}». Dígalo como lo dirá junto a la cámara.`;
  }
}

export const words: TakeWords = {
  good: 'Bien.',
  fault,
  heard: {
    good: 'Se le oye bien.',
    enough: 'Se le oye, pero puede que haya que repetir alguna palabra. Más cerca sería mejor.',
    'too faint': 'La sala es demasiado ruidosa para esta distancia. Acérquese o use el pulsador.',
  },
};
