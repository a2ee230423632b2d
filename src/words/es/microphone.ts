// Spanish: the page that asks for the microphone.
import type { MicrophoneWords } from '../microphoneWords.ts';
import { LISTENING_MEANS } from './listening.ts';

export const NO_MICROPHONE = {
  'no microphone': 'No responde ningún micrófono. Conecte uno y pulse otra vez el botón.',
  'in use': 'No se puede abrir el micrófono, porque lo usa otro programa. Cierre ese programa y pulse otra vez el botón.',
} as const;

export const words: MicrophoneWords = {
  title: 'Micrófono para Sweepbook',
  means: LISTENING_MEANS,
  allow: 'Permitir el micrófono',
  state: {
    ...NO_MICROPHONE,
    prompt: 'Cuando pulse el botón, el navegador preguntará si Sweepbook puede usar el micrófono.',
    granted:
      'El micrófono está permitido. Vuelva al panel: lo demás sigue solo. Si lo ha permitido solo por esta vez, ' +
      'deje abierta esta pestaña mientras trabaja, porque el permiso termina con ella.',
    denied:
      'El micrófono está bloqueado para Sweepbook. Abra los ajustes del sitio desde el icono a la izquierda de la barra de direcciones. ' +
      'Permita allí el micrófono y vuelva a esta pestaña.',
  },
};
