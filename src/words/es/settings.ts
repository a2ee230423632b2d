// Spanish: the settings.
import type { Settings, Theme } from '../../settings.ts';
import type { Pace } from '../../sweep/manner.ts';
import { line } from '../line.ts';
import type { Age, SettingsWords } from '../settingsWords.ts';
import { LISTENING_MEANS } from './listening.ts';
import { write } from './write.ts';

const PACED: Readonly<Record<Pace['set'], string>> = { own: 'ritmo propio', counted: 'ritmo contado' };
const LISTENS: Readonly<Record<Settings['voice']['listen'], string>> = {
  off: 'no',
  own: 'palabras propias',
  here: 'el navegador, en este dispositivo',
  browser: 'el navegador',
};
const LOOKS: Readonly<Record<Theme, string>> = { system: 'como el sistema', light: 'claros', dark: 'oscuros', dim: 'tenues', red: 'rojos' };

const AGE: Readonly<Record<Age['in'], Parameters<typeof write.count>[1]>> = {
  months: { one: '# mes', other: '# meses' },
  years: { one: '# año', other: '# años' },
};
const age = ({ in: unit, count }: Age): string => write.count(count, AGE[unit]);

const UNITS = { m: 'metros', ft: 'pies' } as const;

export const words: SettingsWords = {
  title: 'Ajustes',
  find: {
    label: 'Buscar un ajuste',
    found: (count) => (count === 0 ? 'Ningún ajuste coincide. Pruebe con otra palabra.' : write.count(count, { one: '# encontrado', other: '# encontrados' })),
  },
  pages: { working: 'Trabajo', sound: 'Sonido', voice: 'Voz', look: 'Aspecto', language: 'Idioma', logbook: 'Cuaderno' },
  states: {
    working: (care, { holdTime, pace }) => line([care, write.unit(holdTime, 'second'), PACED[pace.set]]),
    sound: (speaks, tones) => line([speaks ? 'dice cada valor' : 'no dice nada', tones ? 'tonos' : 'sin tonos']),
    voice: (listen) => LISTENS[listen],
    look: (theme, far) => line([LOOKS[theme], far && 'vista en grande']),
    language: (screens, voice) => line([screens, voice !== null && `hablado: ${voice}`]),
    logbook: (after, carried) => line([after !== null && `pendiente al cabo de ${age(after)}`, carried && 'compartido entre sus dispositivos']),
  },
  working: {
    holdTime: (time) => `Duración de la prueba: ${write.unit(time, 'second')}`,
    holdTimeNote: 'Lo habitual son cinco segundos.',
    pace: 'Ritmo',
    paces: {
      own: { label: 'El mío', note: 'Una pulsación o una palabra empieza cada prueba.' },
      counted: { label: 'Contado', note: 'Pasado el tiempo para poner el valor, suenan tres toques y empieza la prueba.' },
    },
    toDial: (time) => `Tiempo para poner el valor: ${write.unit(time, 'second')}`,
    seconds: (time) => write.unit(time, 'second'),
  },
  shortcut: {
    title: 'Atajo de teclado que abre el panel',
    change: 'Cambiar el atajo',
    where: 'Se cambia en la página de complementos del navegador, en el icono del engranaje.',
  },
  sound: {
    speak: 'Decir cada valor',
    tones: { label: 'Tonos', note: 'Al empezar y terminar una prueba, y al anotar o rechazar una respuesta.' },
    rate: 'Velocidad de la voz',
    rates: { slow: 'lenta', own: 'la propia de la voz', brisk: 'ágil', fast: 'rápida' },
    voice: 'Voz del panel',
    anyVoice: 'la que elija el dispositivo',
  },
  look: {
    theme: 'Colores',
    themes: {
      system: { label: 'Como el sistema' },
      light: { label: 'Claros' },
      dark: { label: 'Oscuros' },
      dim: { label: 'Tenues', note: 'Para un estudio a oscuras: nada deslumbra.' },
      red: { label: 'Rojos', note: 'Solo rojo, para que la vista siga hecha a la oscuridad.' },
    },
    far: {
      label: 'Vista en grande',
      note: 'El barrido llena el panel y se lee desde el trípode. También la cambian la palabra, su tecla o una pulsación sobre el valor.',
    },
  },
  language: {
    screens: 'Idioma de las pantallas',
    browser: (language) => `El del navegador: ${language}`,
    voice: 'Hablar y entender',
    asScreens: 'El idioma de las pantallas',
    note: 'Las palabras que usted ha enseñado pertenecen a su idioma.',
    distances: 'Distancias en',
    units: UNITS,
    asCountry: (unit) => `Lo habitual en su país: ${UNITS[unit]}`,
  },
  again: {
    title: 'Volver a medir',
    after: 'Una medición es válida durante',
    age,
  },
  backup: {
    title: 'Copia de seguridad',
    remind: {
      label: 'Recordarme la copia de seguridad',
      note: 'Después de cinco barridos nuevos o de 30 días. Al desinstalar Sweepbook se borra el cuaderno.',
    },
  },
  computers: {
    title: 'Sus otros dispositivos',
    carry: {
      label: 'Compartir entre ellos los últimos valores',
      note:
        'Viajan por la cuenta de su navegador. De este dispositivo sale el último valor de cada situación, su fecha, los nombres del cuerpo ' +
        'y del objetivo, la distancia focal y la distancia. Los barridos, las notas y los números de serie se quedan aquí. Actívelo en cada ' +
        'dispositivo. Al desactivarlo, los valores de este dispositivo se retiran de la cuenta.',
    },
  },
  listening: {
    title: 'Voz',
    by: 'Escuchar mis palabras',
    recognisers: {
      off: { label: 'No', note: 'Todo se hace con las teclas, el pedal y el puntero.' },
      own: { label: 'Con palabras propias', note: 'Nada sale de este dispositivo. Enséñelas en la prueba de escucha.' },
      here: { label: 'Con el navegador, solo en este dispositivo', note: 'Solo donde el navegador esté preparado. No se descarga nada.' },
      browser: { label: 'Con el reconoci\u00admiento de voz del navegador', note: LISTENING_MEANS },
    },
    noRecogniser: 'Este navegador no tiene reconoci\u00admiento de voz.',
    open: 'Escuchar',
    openings: {
      always: { label: 'Durante el barrido' },
      pressed: {
        label: 'Al tocar el pulsador',
        note: 'Para salas ruidosas. Mantenga o toque el pulsador, que ya no hace nada más, y hable.',
      },
    },
    learn: {
      label: 'Aprender de las palabras acertadas',
      note: 'Una palabra que se entendió y no se deshizo ayuda a reconocerla a partir del barrido siguiente. La prueba de escucha puede olvidar lo aprendido.',
    },
    check: 'Prueba de escucha: micrófono, ruido y palabras propias',
    kept: 'Las palabras oídas en un barrido se guardan con sus pruebas, en este navegador y en las copias de seguridad. El sonido no se guarda nunca.',
    erase: 'Borrar las palabras oídas',
    erased: 'Lo oído está borrado. Las pruebas y las respuestas siguen ahí.',
  },
};
