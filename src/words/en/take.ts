// English: what is said of a word that is being taught.
import type { TakeFault } from '../../voice/ownWords/takeQuality.ts';
import type { TakeWords } from '../takeWords.ts';

function fault(word: string, found: TakeFault): string {
  switch (found.is) {
    case 'too long':
      return `That was too long for one word. Say only “${word}”, with quiet before and after it.`;
    case 'not heard':
      return `Nothing was heard. Come closer and say “${word}” again.`;
    case 'too loud':
      return `That was too loud for the microphone. Say “${word}” again from further away.`;
    case 'cut off':
      return `The word was cut off. Wait for the mark, say “${word}”, and stay quiet after it.`;
    case 'too short':
      return `That was too short to be “${word}”. Say it again.`;
    case 'too quiet':
      return `“${word}” hardly stood out from the noise. Come closer, speak up or switch the fan off, and say it again.`;
    case 'too like another word':
      return `That sounded more like “${found.other}” than “${word}”. Say it again, or choose another word.`;
    case 'unlike the other takes':
      return `That was unlike your other takes of “${word}”. Say it as you will at the camera.`;
  }
}

export const words: TakeWords = {
  good: 'Good.',
  fault,
  heard: {
    good: 'You are heard well.',
    enough: 'You are heard, but some words may be asked for again. Closer would be better.',
    'too faint': 'The room is too loud for this distance. Come closer, or use the switch.',
  },
};
