// Spanish: what went wrong with what lies on this computer. What the browser says stands in brackets, in its own words.
import type { StoreWords } from '../storeWords.ts';

export const words: StoreWords = {
  fault: ({ is, why }) =>
    is === 'not read'
      ? `No se pueden leer los datos guardados (${why ?? 'sin respuesta'}). Cierre el panel y vuelva a abrirlo.`
      : `Ahora no se puede guardar nada (${why ?? 'sin respuesta'}). Deje el panel abierto y libere espacio en el disco. ` +
        'Todo se conserva aquí y se guardará en cuanto sea posible.',
  tryNow: 'Reintentar',
  taught: {
    'not read': 'No se pueden leer sus palabras propias. Vuelva a enseñarlas en la prueba de escucha. Todo lo demás sigue igual.',
    'not kept': 'No se puede guardar lo que ha enseñado. Libere espacio en el disco y diga otra vez la palabra.',
    'not erased': 'Ahora no se pueden borrar sus palabras propias. Inténtelo otra vez.',
  },
};
