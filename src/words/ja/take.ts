// Japanese: what is said of a word that is being taught.
import type { TakeFault } from '../../voice/ownWords/takeQuality.ts';
import type { TakeWords } from '../takeWords.ts';

function fault(word: string, found: TakeFault): string {
  switch (found.is) {
    case 'too long':
      return `1語には長すぎます。前後を静かにして、「${word}」だけを言ってください。`;
    case 'not heard':
      return `聞こえませんでした。近づいて、もう一度「${word}」と言ってください。`;
    case 'too loud':
      return `マイクには大きすぎました。少し離れて、もう一度「${word}」と言ってください。`;
    case 'cut off':
      return `言葉が途中で切れました。印が出てから「${word}」と言い、そのあとは静かにしてください。`;
    case 'too short':
      return `「${word}」にしては短すぎました。もう一度言ってください。`;
    case 'too quiet':
      return `「${word}」が騒音に埋もれました。近づくか、大きな声にするか、ファンを止めて、もう一度言ってください。`;
    case 'too like another word':
      return `「${word}」より「${found.other}」に近く聞こえました。もう一度言うか、別の言葉を選んでください。`;
    case 'unlike the other takes':
      return `ほかの「${word}」の発声と違いました。カメラの前で言うとおりに言ってください。`;
  }
}

export const words: TakeWords = {
  good: 'よく聞こえました。',
  fault,
  heard: {
    good: '声はよく聞こえています。',
    enough: '声は聞こえていますが、聞き返すことがあります。もう少し近いほうが確実です。',
    'too faint': 'この距離には部屋が騒がしすぎます。近づくか、スイッチを使ってください。',
  },
};
