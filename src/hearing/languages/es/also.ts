// Spanish: what is understood beside the taught words. "Desiguales" says the opposite once its first syllable is lost, so "iguales" counts
// only with what it is said of.
import type { Word } from '../../../sweep/inputs.ts';

/** Of two arrows. */
const BOTH = ['flechas', 'ambas', 'ambas flechas', 'las dos', 'las dos flechas'];

export const ALSO: Record<Word, readonly string[]> = {
  solid: ['luz firme', 'fija', 'luz fija', 'luz estable'],
  delayed: ['demorado', 'demorada', 'con demora', 'hay demora', 'con retraso'],
  flicker: ['parpadeo', 'parpadeó', 'parpadeando', 'parpadeaba', 'ha parpadeado', 'titila'],
  nothing: ['apagada', 'no hay luz', 'nada de luz', 'ninguna luz', 'no enciende', 'no se enciende'],
  left: ['flecha izquierda', 'izquierda sola', 'flecha de la izquierda', 'flecha a la izquierda'],
  right: ['flecha derecha', 'derecha sola', 'flecha de la derecha', 'flecha a la derecha'],
  balanced: [...BOTH.map((both) => `${both} iguales`), ...BOTH.map((both) => `${both} parejas`), 'parejos'],
  lopsided: [...BOTH.map((both) => `${both} desiguales`), ...BOTH.map((both) => `${both} torcidas`), 'desiguales'],
  holding: ['mantener', 'manteniendo', 'mantenido', 'mantengo pulsado', 'mantengo apretado', 'pulsando', 'presionando'],
  undo: ['deshaz', 'deshazlo', 'deshaz eso', 'deshacerlo', 'anular', 'anula eso', 'borra eso', 'quita eso'],
  repeat: ['repetir', 'repite eso', 'repítelo', 'repítemelo', 'dilo otra vez', 'dilo de nuevo'],
  pause: ['pausar', 'en pausa', 'haz una pausa'],
  resume: ['retomar', 'retomamos', 'reanuda', 'reanudar', 'continúa', 'continuar', 'continuamos'],
  skip: ['omitir', 'omítelo', 'omite este', 'omite ese', 'omite esto', 'sáltalo', 'sáltatelo', 'sáltate este'],
  accept: ['acepta', 'aceptar', 'aceptado', 'acéptalo', 'termina'],
  'go on': ['prosigo', 'proseguir', 'proseguimos', 'continúa', 'continuar', 'quiero seguir'],
  set: [],
  same: ['intacta', 'sigue intacto', 'sigue igual', 'está igual', 'queda igual', 'todo igual', 'no se ha movido', 'no se movió', 'no está movido', 'no movido'],
  shifted: ['movida', 'se ha movido', 'se movió', 'desplazado', 'se ha desplazado', 'se desplazó'],
  finish: ['terminar', 'terminamos', 'termina ya', 'termina aquí', 'finaliza', 'finalizar'],
  help: ['ayúdame'],
  entered: ['guardada', 'está guardado', 'introducido'],
  next: [
    'siguiente paso',
    'paso siguiente',
    'siguiente objetivo',
    'siguiente lente',
    'próximo',
    'próximo objetivo',
    'próximo paso',
    'próxima',
    'próxima lente',
  ],
  back: [...['ve', 'vuelve', 'volver', 'vamos'].map((going) => `${going} atrás`), 'para atrás', 'hacia atrás', 'paso atrás', 'regresa', 'regresar'],
  'far view': ['verlo en grande', 'vista grande', 'vista lejana', 'ver de lejos', 'desde lejos'],
};
