// English: the page that asks for the microphone.
import type { MicrophoneWords } from '../microphoneWords.ts';
import { LISTENING_MEANS } from './listening.ts';

export const NO_MICROPHONE = {
  'no microphone': 'No microphone answers. Connect one, then press the button again.',
  'in use': 'The microphone cannot be opened, because another program has it. Close that program, then press the button again.',
} as const;

export const words: MicrophoneWords = {
  title: 'Microphone for Sweepbook',
  means: LISTENING_MEANS,
  allow: 'Allow the microphone',
  state: {
    ...NO_MICROPHONE,
    prompt: 'When you press the button, the browser asks whether Sweepbook may use the microphone.',
    granted:
      'The microphone is allowed. Go back to the panel: it goes on by itself. If you allowed it for this time only, ' +
      'leave this tab open while you work, because the permission ends with it.',
    denied:
      'The microphone is blocked for Sweepbook. Open the site settings from the icon at the left of the address bar. ' +
      'Set the microphone to “Allow”, then come back to this tab.',
  },
};
