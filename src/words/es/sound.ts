// Spanish: the sound check, and what is so where nothing sounds or nothing is spoken.
import type { SoundWords } from '../soundWords.ts';
import { write } from './write.ts';
import { correctionSaid } from '../taught.ts';

const said = (): string => `«${correctionSaid(6)}»`;

const percent = (value: number): string => write.percent(value / 100);

export const words: SoundWords = {
  title: 'Prueba de sonido',
  offer: 'Prueba de sonido: oír una vez los tonos y la voz',
  play: 'Oír los tonos y un valor',
  loudness: 'Volumen',
  percent,
  loudnessAt: (value) => `Volumen: ${percent(value)}`,
  playing: 'Un tono ascendente marca el inicio de la prueba y uno descendente, el final. Después se dice un valor.',
  get heard() {
    return `¿Ha oído dos tonos y ${said()}? Si no, suba el volumen del dispositivo o elija otra salida de sonido.`;
  },
  done: 'Listo',
  tonesOnly: '¿Ha oído dos tonos? La voz está desactivada, así que los valores solo se muestran.',
  get speechOnly() {
    return `¿Ha oído ${said()}? Los tonos están desactivados, así que la prueba empieza y termina sin ellos.`;
  },
  standsStill: 'Este dispositivo no emite sonido. Conecte un altavoz o unos auriculares. Hasta entonces, todo se muestra.',
  mute: (language) =>
    `El navegador no encuentra ninguna voz en ${language} en este dispositivo: todo se muestra, con tonos, pero no se dice. ` +
    'Para oírlo, instale una voz en los ajustes de voz del sistema.',
  off: 'Los tonos y la voz están desactivados: solo la pantalla indica cuándo empieza y termina una prueba.',
  switchOn: 'Activar los dos',
};
