// Spanish: what listening by the browser's recogniser means, shown before the first yes and where the microphone is asked for.
export const LISTENING_MEANS =
  'Para entender palabras, el reconoci\u00admiento de voz del navegador escucha por el micrófono durante el barrido y mientras se muestra su resultado. ' +
  'Es posible que el fabricante del navegador envíe el sonido a un servidor suyo. Sweepbook no guarda ni envía sonido alguno. ' +
  'Todo lo que se hace con palabras se hace también con las teclas, el pedal y el puntero.';
