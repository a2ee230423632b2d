// Japanese: the page that asks for the microphone.
import type { MicrophoneWords } from '../microphoneWords.ts';
import { LISTENING_MEANS } from './listening.ts';

export const NO_MICROPHONE = {
  'no microphone': 'マイクが見つかりません。つないでから、もう一度ボタンを押してください。',
  'in use': '別のプログラムが使用中のため、マイクを開けません。そのプログラムを閉じてから、もう一度ボタンを押してください。',
} as const;

export const words: MicrophoneWords = {
  title: 'Sweepbookのマイク',
  means: LISTENING_MEANS,
  allow: 'マイクを許可',
  state: {
    ...NO_MICROPHONE,
    prompt: 'ボタンを押すと、Sweepbookにマイクの使用を許可するか、ブラウザーが尋ねます。',
    granted:
      'マイクが許可されました。パネルに戻ると、自動で先へ進みます。今回だけ許可した場合は、作業中このタブを開いたままにしてください。閉じると許可も終わります。',
    denied:
      'Sweepbookのマイク使用がブロックされています。アドレスバーの左のアイコンからサイトの設定を開いてください。' +
      'マイクを「許可」にして、このタブに戻ってください。',
  },
};
