// Spanish: what stands before the catalogue can be read.
import type { FirstWords } from '../firstWords.ts';

export const words: FirstWords = {
  name: 'Sweepbook',
  places: 'Más',
  place: { logbook: 'Cuaderno', plan: 'Plan', kit: 'Equipo', settings: 'Ajustes', help: 'Ayuda' },
  field: 'Busque un objetivo o dé nombre a uno nuevo',
  placeholder: 'Objetivo conocido o nuevo',
  start: 'Empezar',
  back: 'Atrás',
  dismiss: 'Cerrar',
  announcement: 'Aviso',
  opening: 'Abriendo…',
  unread: 'No se puede leer una parte del panel. Ciérrelo y vuelva a abrirlo. No se pierde nada.',
  notRead: 'No se han leído los datos guardados, así que no se puede guardar nada. Cierre el panel y vuelva a abrirlo.',
  mark: { word: 'sin voz', press: 'sin voz: activarla' },
};
