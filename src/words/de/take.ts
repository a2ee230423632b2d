// German: what is said of a word that is being taught.
import type { TakeFault } from '../../voice/ownWords/takeQuality.ts';
import type { TakeWords } from '../takeWords.ts';

function fault(word: string, found: TakeFault): string {
  switch (found.is) {
    case 'too long':
      return `Das war zu lang für ein Wort. Sagen Sie nur „${word}“, mit Stille davor und danach.`;
    case 'not heard':
      return `Es war nichts zu hören. Kommen Sie näher und sagen Sie noch einmal „${word}“.`;
    case 'too loud':
      return `Das war zu laut für das Mikrofon. Sagen Sie „${word}“ noch einmal aus größerem Abstand.`;
    case 'cut off':
      return `Das Wort war abgeschnitten. Warten Sie auf das Zeichen, sagen Sie „${word}“ und bleiben Sie danach still.`;
    case 'too short':
      return `Das war zu kurz für „${word}“. Sagen Sie es noch einmal.`;
    case 'too quiet':
      return `„${word}“ hob sich kaum vom Geräusch ab. Kommen Sie näher, sprechen Sie lauter oder schalten Sie den Lüfter aus. Dann sagen Sie es noch einmal.`;
    case 'too like another word':
      return `Das klang eher wie „${found.other}“ als wie „${word}“. Sagen Sie es noch einmal oder wählen Sie ein anderes Wort.`;
    case 'unlike the other takes':
      return `Das klang anders als Ihr „${word}“ davor. Sagen Sie es so, wie Sie es an der Kamera sagen.`;
  }
}

export const words: TakeWords = {
  good: 'Gut.',
  fault,
  heard: {
    good: 'Sie sind gut zu hören.',
    enough: 'Sie sind zu hören, aber manches Wort wird vielleicht nachgefragt. Näher wäre besser.',
    'too faint': 'Der Raum ist für diesen Abstand zu laut. Kommen Sie näher oder benutzen Sie den Taster.',
  },
};
