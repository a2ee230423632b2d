// German: the page that asks for the microphone.
import type { MicrophoneWords } from '../microphoneWords.ts';
import { LISTENING_MEANS } from './listening.ts';

export const NO_MICROPHONE = {
  'no microphone': 'Es meldet sich kein Mikrofon. Schließen Sie eines an, dann drücken Sie noch einmal auf die Schaltfläche.',
  'in use':
    'Das Mikrofon lässt sich nicht öffnen, weil ein anderes Programm es belegt. Schließen Sie dieses, dann drücken Sie noch einmal auf die Schaltfläche.',
} as const;

export const words: MicrophoneWords = {
  title: 'Mikrofon für Sweepbook',
  means: LISTENING_MEANS,
  allow: 'Mikrofon erlauben',
  state: {
    ...NO_MICROPHONE,
    prompt: 'Wenn Sie auf die Schaltfläche drücken, fragt der Browser, ob Sweepbook das Mikrofon benutzen darf.',
    granted:
      'Das Mikrofon ist erlaubt. Gehen Sie zurück zur Seitenleiste, sie macht von selbst weiter. Haben Sie es nur für dieses Mal erlaubt, ' +
      'lassen Sie diesen Tab bei der Arbeit offen, denn die Erlaubnis endet mit ihm.',
    denied:
      'Das Mikrofon ist für Sweepbook gesperrt. Öffnen Sie die Websiteeinstellungen über das Symbol links in der Adressleiste. ' +
      'Stellen Sie das Mikrofon auf „Zulassen“ oder „Erlauben“, dann kommen Sie zu diesem Tab zurück.',
  },
};
