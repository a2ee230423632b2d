// Spanish: each trouble in one short sentence, said and shown when it is found.
import type { Trouble } from '../../sweep/trouble/trouble.ts';

export const TROUBLE_SAID: Readonly<Record<Trouble['trouble'], string>> = {
  'flickers everywhere': 'La luz parpadea con todos los valores.',
  'never lights': 'La luz no se enciende nunca.',
  'lights everywhere': 'Luz fija con todos los valores.',
  'hole in the band': 'La banda tiene un hueco.',
  'arrows contradict the lights': 'Las flechas contradicen a la luz.',
  'focus moved': 'El enfoque se ha movido.',
  'verdicts misjudged': 'Hay respuestas que no concuerdan.',
  'band drifts': 'La banda se desplaza.',
  play: 'Influye el sentido en que se llega al valor.',
};
