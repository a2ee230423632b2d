// Japanese: what listening by the browser's recogniser means, shown before the first yes and where the microphone is asked for.
export const LISTENING_MEANS =
  '言葉を聞き取るため、測定中と結果の表示中は、ブラウザー内蔵の音声認識がマイクの音を聞きます。' +
  '音声は、ブラウザーの提供元のサーバーに送られることがあります。Sweepbook自体は音声を保存も送信もしません。' +
  '言葉でできることは、すべてキー、ペダル、ポインターでもできます。';
