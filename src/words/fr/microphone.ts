// French: the page that asks for the microphone.
import type { MicrophoneWords } from '../microphoneWords.ts';
import { LISTENING_MEANS } from './listening.ts';

export const NO_MICROPHONE = {
  'no microphone': 'Aucun micro ne répond. Branchez-en un, puis appuyez de nouveau sur le bouton.',
  'in use': 'Le micro ne peut pas être ouvert, car un autre programme l’utilise. Fermez ce programme, puis appuyez de nouveau sur le bouton.',
} as const;

export const words: MicrophoneWords = {
  title: 'Micro pour Sweepbook',
  means: LISTENING_MEANS,
  allow: 'Autoriser le micro',
  state: {
    ...NO_MICROPHONE,
    prompt: 'Quand vous appuyez sur le bouton, le navigateur demande si Sweepbook peut utiliser le micro.',
    granted:
      'Le micro est autorisé. Revenez au panneau : la suite vient d’elle-même. Si vous l’avez autorisé pour cette fois seulement, ' +
      'laissez cet onglet ouvert pendant le travail : l’autorisation cesse avec lui.',
    denied:
      'Le micro est bloqué pour Sweepbook. Ouvrez les paramètres du site par l’icône à gauche de la barre d’adresse. ' +
      'Mettez le micro sur « Autoriser », puis revenez à cet onglet.',
  },
};
