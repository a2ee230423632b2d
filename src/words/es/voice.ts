// Spanish: what the microphone mark and the voice sheet say, and what is said of a deaf ear.
import { voiceNamed } from '../named.ts';
import { taught } from '../taught.ts';
import type { VoiceWords } from '../voiceWords.ts';
import { words as first } from './first.ts';

export const words: VoiceWords = {
  mark: {
    off: first.mark.word,
    ready: 'con voz',
    begun: 'sin preparar',
    asking: 'preguntando',
    opening: 'abriendo',
    listening: 'escuchando',
    speaking: 'hablando',
    'opens when pressed': 'pulse, hable',
  },
  markDeaf: {
    'no microphone': 'sin micro',
    'not asked': 'sin permiso',
    blocked: 'bloqueado',
    'in use': 'ocupado',
    muted: 'silenciado',
    silent: 'sin señal',
    'no service': 'sin servicio',
    'no network': 'sin red',
    'no recogniser': 'enseñar',
    'not on this computer': 'no listo',
    'to be downloaded': 'descargar',
    'being downloaded': 'descargando',
    'not usable': 'no permitido',
    get 'no language'() {
      return `sin ${voiceNamed('es')}`;
    },
    'no words': 'sin palabras',
    'words unreadable': 'ilegibles',
    'no sound': 'sin sonido',
    'held back': 'toque aquí',
    'another window': 'otra ventana',
    unread: 'reabra panel',
  },
  markSilent: { mute: 'no habla', off: 'sin sonido' },
  marked: (shown, press) => `${shown.join(' ')}: ${press}`,
  means: {
    off: 'Voz desactivada.',
    ready: 'La voz está activada y escucha durante el barrido.',
    begun: 'La voz está desactivada hasta que se prepare.',
    asking: 'El navegador pregunta si se puede usar el micrófono.',
    opening: 'Se está abriendo el micrófono.',
    listening: 'Escuchando.',
    speaking: 'El panel habla y mientras tanto no escucha.',
    'opens when pressed': 'Escucha cuando se toca el pulsador.',
  },
  deaf: {
    'no microphone': 'No responde ningún micrófono. Conecte uno. Después la escucha empieza sola.',
    'not asked': 'El navegador aún no ha permitido el micrófono. Permítalo. Después la escucha empieza sola.',
    blocked: 'El micrófono está bloqueado para Sweepbook. La página del micrófono muestra cómo permitirlo de nuevo.',
    'in use': 'No se puede abrir el micrófono, porque lo usa otro programa. Cierre ese programa. Después la escucha empieza sola.',
    muted: 'El micrófono está silenciado. Actívelo en el propio micrófono o en los ajustes de sonido del sistema.',
    silent: 'Del micrófono no llega nada. Enciéndalo o elija otro en el navegador o en el sistema. Después la escucha empieza sola.',
    'no service': 'El reconoci\u00admiento de voz del navegador no responde. Compruebe la red o enseñe sus palabras propias. Se vuelve a intentar solo.',
    'no network':
      'No hay red, y el reconoci\u00admiento de voz del navegador la necesita. Las teclas siguen funcionando. Cuando vuelva la red, la escucha empieza sola.',
    'no recogniser': 'Este navegador no tiene reconoci\u00admiento de voz. Enseñe sus palabras propias.',
    'not on this computer':
      'El navegador no tiene reconoci\u00admiento de voz listo en este dispositivo. Enseñe sus palabras propias o elija el reconoci\u00admiento del navegador, que puede enviar el sonido fuera.',
    'to be downloaded': 'El navegador puede reconocer palabras en este dispositivo en cuanto descargue lo necesario.',
    'being downloaded': 'El navegador descarga lo necesario para reconocer palabras en este dispositivo. Después la escucha empieza sola.',
    'not usable': 'El navegador no permite aquí su reconoci\u00admiento de voz. Permítalo en los ajustes del navegador o enseñe sus palabras propias.',
    get 'no language'() {
      return `El reconoci\u00admiento de voz del navegador no conoce aquí el ${voiceNamed('es')}. Enseñe sus palabras propias.`;
    },
    'no words': 'Aún no hay palabras enseñadas. Enseñe las siete palabras de un barrido.',
    'words unreadable': 'No se pueden leer sus palabras propias. Vuelva a enseñarlas en la prueba de escucha.',
    'no sound': 'Este navegador no entrega el sonido del micrófono. Todo se hace con las teclas, el pedal y el puntero.',
    'held back': 'El navegador retiene el sonido del micrófono hasta que toque el panel. Pulse una tecla o haga clic una vez.',
    'another window': 'Está escuchando otra ventana. Ciérrela o escuche en esta.',
    unread: 'No se puede leer una parte del panel. Ciérrelo y vuelva a abrirlo. No se pierde nada.',
  },
  deafSaid: {
    'no microphone': 'No le oigo: no hay micrófono.',
    'not asked': 'No le oigo: el micrófono no está permitido.',
    blocked: 'No le oigo: el micrófono está bloqueado.',
    'in use': 'No le oigo: otro programa usa el micrófono.',
    muted: 'No le oigo: el micrófono está silenciado.',
    silent: 'No le oigo: del micrófono no llega nada.',
    'no service': 'No le oigo: el reconoci\u00admiento de voz no responde.',
    'no network': 'No le oigo: no hay red.',
    'no recogniser': 'No le oigo: este navegador no reconoce la voz.',
    'not on this computer': 'No le oigo: el reconoci\u00admiento de voz no está listo.',
    'to be downloaded': 'No le oigo: falta descargar el reconoci\u00admiento de voz.',
    'being downloaded': 'Aún no le oigo: se descarga el reconoci\u00admiento de voz.',
    'not usable': 'No le oigo: el reconoci\u00admiento de voz no está permitido aquí.',
    get 'no language'() {
      return `No le oigo: el reconoci\u00admiento de voz no conoce el ${voiceNamed('es')}.`;
    },
    'no words': 'No le oigo: no hay palabras enseñadas.',
    'words unreadable': 'No le oigo: no se pueden leer sus palabras.',
    'no sound': 'No le oigo: el navegador no entrega sonido.',
    'held back': 'No le oigo hasta que pulse una tecla.',
    'another window': 'Escucha otra ventana.',
    unread: 'No le oigo. Vuelva a abrir el panel.',
  },
  hearsAgain: 'Ya le oigo otra vez.',
  press: {
    sheet: 'Abrir la voz',
    allow: 'Permitir el micrófono',
    page: 'Abrir la página del micrófono',
    teach: 'Enseñar sus palabras',
    here: 'Escuchar aquí',
  },
  goes: {
    browser:
      'Sus palabras las reconoce el navegador, y es posible que su fabricante envíe el sonido a un servidor suyo. ' +
      'Sweepbook no guarda ni envía sonido alguno.',
    here: 'Sus palabras las reconoce el navegador en este dispositivo. El sonido no sale de él ni se guarda.',
    own: 'Sus palabras se comparan en este dispositivo con las que usted enseñó. El sonido no sale de él ni se guarda.',
  },
  sheet: {
    title: 'Voz',
    get offered() {
      return `Diga «${taught('holding')}», «${taught('solid')}», «${taught('flicker')}» en lugar de pulsar teclas. Las teclas, el pedal y el puntero siguen funcionando.`;
    },
    allow: 'Permitir',
    allowAndTeach: 'Permitir y enseñar siete palabras',
    download: 'Descargarlo',
    downloadInstead: 'O bien descargar el reconoci\u00admiento del navegador: el sonido no sale de este dispositivo',
    downloading: 'Descargando',
    notDownloaded: 'No se pudo descargar. Compruebe la red y el espacio libre, e inténtelo otra vez.',
    teachInstead: 'O bien enseñar siete palabras: el sonido no sale de este dispositivo',
    asking: 'El navegador pregunta si Sweepbook puede usar el micrófono. Responda allí que lo permite. Lo demás sigue solo.',
    once: 'Si lo permite solo por esta vez, deje abierta esa pestaña mientras trabaja, porque el permiso termina con ella.',
    askAgain: 'Preguntar otra vez',
    refused: 'El micrófono está bloqueado para Sweepbook, así que la voz sigue desactivada. No cambia nada más.',
    howToUnblock: 'Ver cómo permitirlo',
    leaveOff: 'Seguir sin voz',
    on: 'Voz activada.',
    get trial() {
      return `Si quiere, haga la prueba: diga «${taught('solid')}».`;
    },
    heard: (word: string) => `Se oyó «${word}».`,
    get begin() {
      return `Empiece abajo y diga «${taught('holding')}».`;
    },
    get toSweep() {
      return `Volver al barrido y decir «${taught('resume')}»`;
    },
    switchOff: 'Desactivar la voz',
    checkHearing: 'Prueba de escucha: ruido y palabras propias',
    again: 'Reintentar',
    teach: (done: number, of: number) =>
      `${done} de ${of} palabras enseñadas. Cada una se dice cinco veces, en total menos de dos minutos. Lo demás sigue solo.`,
    lesson: (said) => said.map((word) => `«${word}»`).join(', '),
    openLesson: 'Enseñar las siete palabras',
  },
};
