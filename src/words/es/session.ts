// Spanish: what the session itself has to say.
import { writeSteps } from '../../sweep/scale.ts';
import type { SessionWords } from '../sessionWords.ts';
import { pair, within } from './subject.ts';
import { write } from './write.ts';

export const words: SessionWords = {
  stored: {
    reading: (share) => `Se está leyendo el cuaderno: ${write.percent(share)}.`,
    readAgain: 'Leer otra vez',
    tooNew: 'Los datos guardados aquí son de un Sweepbook más nuevo. Actualice este. Hasta entonces no se cambia nada.',
    spoilt: (key, field, place) =>
      `Un dato guardado como «${key}» no se puede usar${field === null ? '' : `, a causa de «${field}»`}. ` +
      `Se conserva entero como «${place}», y todo lo demás se usa sin él.`,
    unread: 'Ahora no se pueden leer los datos guardados. Inténtelo otra vez.',
    notOnDisk: 'Se ve aquí, pero aún no está en el disco. Deje el panel abierto: lo intentará hasta lograrlo.',
  },
  copies: {
    fault: {
      'copies unread': 'No se pueden leer las copias diarias. Los datos guardados no están afectados.',
      'copy unread': 'No se puede leer esta copia. Elija otra.',
      'copy not kept': 'No se puede guardar la copia diaria. Libere espacio en el disco. Se intentará de nuevo al abrir el panel.',
    },
    offered: (at) => `Aquí ya no hay nada guardado, pero existe una copia de todo, del ${write.dayAndTime(at)}.`,
    bringBack: 'Recuperarla',
  },
  bringing: {
    brokenOff: 'La recuperación de un cuaderno se interrumpió, así que todo está como antes. Vuelva a recuperarlo.',
    notCopied: 'No se pudo hacer antes una copia de lo que hay aquí, así que no se ha importado nada. Libere espacio en el disco e inténtelo otra vez.',
    tooNew: 'Esta copia es de un Sweepbook más nuevo. Actualice este e inténtelo otra vez.',
  },
  sync: {
    fault: {
      'no sync':
        'La sincronización del navegador no funciona ahora, así que los últimos valores no llegan a sus otros dispositivos. Aquí se conserva todo, y el panel vuelve a intentarlo mientras esté abierto.',
    },
    unread: 'Algunos valores de otro dispositivo no se pueden leer aquí. Actualice Sweepbook en los dos.',
    noRoom: 'En la sincronización del navegador no caben los valores más antiguos. Se conservan aquí y también en la copia de seguridad.',
    notTakenOut: 'No se pudieron quitar los valores de este dispositivo de la sincronización del navegador.',
    tryAgain: 'Reintentar',
    overtaken: ({ value, old, more, ...subject }) => {
      const others = more === 0 ? '' : ` ${write.count(more, { one: 'Hay # caso más como este', other: 'Hay # casos más como este' })}.`;
      return (
        `Otro dispositivo tiene un valor posterior para ${pair(subject)}: ${writeSteps(value)} en lugar de ${writeSteps(old)}.${others} ` +
        'Los dos quedan en el historial. Compruebe qué valor tiene la cámara.'
      );
    },
  },
  erasing: {
    elsewhere: 'Hay un barrido en curso en otra ventana. Borre allí lo que se oyó o traiga el barrido a esta.',
    copiesUnread: 'Lo que se oyó está borrado, pero ahora no se pueden leer las copias diarias. Inténtelo otra vez.',
    copyLeft: 'Lo que se oyó está borrado, salvo en una de las copias diarias. Inténtelo otra vez.',
    notOnDisk: 'Ya no está en la pantalla, pero sigue en el disco. Deje el panel abierto: lo intentará hasta lograrlo.',
  },
  proofs: {
    situationGone: 'Esta situación ya no está en el equipo. Elija otra y vuelva a guardar.',
    unfit: 'No se pueden guardar estas cifras. Vuelva a añadir las fotos.',
    gone: 'Esta comprobación con fotos ya no está en el cuaderno.',
    copiesUnread: 'Las cifras aún no se han borrado, porque ahora no se pueden leer las copias diarias. Inténtelo otra vez.',
    copyLeft: 'Las cifras aún no se han borrado, porque no se pueden quitar de una de las copias diarias. Inténtelo otra vez.',
    crops: {
      'crops unread': 'Ahora no se pueden leer los recortes. Las cifras no están afectadas.',
      'crops not kept': 'Las cifras están guardadas, pero no hay sitio para los recortes. Libere espacio en el disco.',
      'crops not erased': 'Ahora no se pueden borrar los recortes. Inténtelo otra vez.',
    },
  },
  byHand: (fault) => {
    switch (fault.is) {
      case 'ends off the scale':
        return `Indique los dos extremos como correcciones ${within(fault.scale)}.`;
      case 'off the scale':
        return `Indique una corrección ${within(fault.scale)}.`;
      case 'outside the ends':
        return 'Elija un valor entre los dos extremos.';
    }
  },
  recordGone: 'Este barrido ya no está en el cuaderno.',
  unexpected: (why) => `Ha ocurrido un error inesperado (${why}). El barrido continúa. No se ha perdido nada de lo anotado.`,
  became: {
    'not here': 'no cuenta. El barrido está en otra ventana. Tráigalo a esta para dirigirlo aquí.',
    'asked back': 'preguntado',
    'said again': 'repetido',
    help: 'ayuda',
    'looked up': 'consultado',
    'not taken': 'no cuenta',
    'not clear': 'no se entendió',
    'too late': 'no cuenta, porque empezó antes de este paso',
  },
  farView: { on: 'sí', off: 'no' },
  missed: {
    'amid talk': 'no cuenta, porque había conversación. Dígalo otra vez.',
    'beside the panel': 'no cuenta, porque el panel estaba hablando. Dígalo otra vez.',
  },
  untold: {
    noScale: 'Indique el rango de corrección con tres números enteros: de, a y paso.',
    noSweep: 'Este barrido no se puede cambiar aquí. Si está en otra ventana, tráigalo antes a esta.',
    holdFirst: 'Termine antes esta prueba y vuelva a indicarlo.',
    offTheScale: (value) => `${writeSteps(value)} ya se ha probado y no está en este rango. Deshaga esa prueba o elija un rango que lo incluya.`,
    arrowsSeen: 'En las pruebas hechas hay flechas. Deshaga antes esas pruebas o conserve las flechas.',
    kitGone: 'Eso ya no está en el equipo. Elija otra cosa.',
    resultGone: 'Este resultado ya no está en el equipo. Búsquelo en el cuaderno.',
    missing: {
      body: 'Ponga antes nombre al cuerpo.',
      lens: 'Ponga antes nombre al objetivo.',
      length: 'Indique también la distancia focal o inclúyala en el nombre, por ejemplo «Corvid 85».',
    },
  },
  standIn: { body: 'Cuerpo sin nombre', lens: (opened) => `Objetivo sin nombre, ${write.dayAndTime(opened)}` },
  unplanned: {
    'kit gone': 'Ese cuerpo, objetivo o distancia ya no está en el equipo. Elija otra cosa.',
    'value off the scale': 'El valor que tiene ahora el cuerpo no está en su rango. Vuelva a indicarlo.',
    'sweep not kept yet': 'Ese barrido aún no está en el cuaderno. Espere un momento e inténtelo otra vez.',
    'no width': 'Ese barrido no tiene un ancho que trasladar. Vuelva a medir la situación.',
  },
  unbegun: {
    'under way': 'Hay un barrido en curso. Termínelo o déjelo antes.',
    'begun elsewhere': 'Otra ventana acaba de empezar un barrido. Termine antes ese.',
  },
  practice: { body: 'Cámara de práctica', lens: 'Objetivo de práctica' },
};
