// Spanish: the kit.
import type { Lens } from '../../kit/lens.ts';
import type { KitList } from '../../kit/change.ts';
import { byUnit } from '../countryInUse.ts';
import type { KitWords } from '../kitWords.ts';
import { FIELD_FAULT } from './fieldFaults.ts';
import { write } from './write.ts';

const THIS: Readonly<Record<KitList, string>> = {
  bodies: 'Este cuerpo',
  lenses: 'Este objetivo',
  converters: 'Este convertidor',
  situations: 'Esta situación',
};

const LACKS = {
  body: 'Elija primero un cuerpo para esta situación.',
  lens: 'Elija primero un objetivo para esta situación.',
  converter: 'Elija primero un convertidor para esta situación.',
} as const;

const named = (lenses: readonly Pick<Lens, 'name' | 'serial'>[]): string =>
  write.list(lenses.map(({ name, serial }) => (serial === null ? name : `${name} (${serial})`)));

const range = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? write.number(from, 1) : `${write.number(from, 1)}\u2013${write.number(to, 1)}`;

export const words: KitWords = {
  title: 'Equipo',
  lists: {
    body: { title: 'Cuerpos', add: 'Añadir un cuerpo', unnamed: 'Cuerpo nuevo' },
    lens: { title: 'Objetivos', add: 'Añadir un objetivo', unnamed: 'Objetivo nuevo' },
    converter: { title: 'Convertidores', add: 'Añadir un convertidor', unnamed: 'Convertidor nuevo' },
  },
  none: 'Aún ninguno.',
  retired: (count) => `Retirados (${write.number(count)})`,
  save: 'Guardar',
  retire: 'Retirarlo y conservar lo medido con él',
  bringBack: 'Volver a usarlo',
  warning: (warning) => {
    const body = warning.body.name;
    if (warning.about === 'memory') {
      const left = warning.left === 0 ? 'no queda ningún lugar' : write.count(warning.left, { one: 'queda un lugar', other: 'quedan # lugares' });
      return `${body} recuerda ${write.count(warning.remembers, { one: '# objetivo', other: '# objetivos' })} y ${left}. Borre de su memoria uno que ya no use antes de introducir otro.`;
    }
    const lenses = named(warning.lenses);
    return warning.surely
      ? `${body} no distingue entre ${lenses}. Comparten un mismo valor, así que introduzca el del que esté en uso.`
      : `Puede que ${lenses} compartan un mismo valor en ${body}. Consulte el manual e indíquelo en el equipo.`;
  },
  fields: {
    name: 'Nombre',
    yourName: 'El nombre que usted le da.',
    serial: 'Número de serie',
    model: 'Modelo, como figura en sus fotos',
    sensor: { legend: 'Sensor, mm', width: 'ancho', height: 'alto' },
    scale: { legend: 'Rango de corrección', from: 'De', to: 'a', step: 'paso' },
    remembers: { label: 'Cuántos objetivos recuerda', hint: 'Déjelo vacío si no lo sabe. Está en el manual.' },
    focal: { legend: 'Distancia focal, mm', hint: 'Deje vacía la máxima si no es un zoom.', from: 'mínima', to: 'máxima' },
    widest: { legend: 'Abertura máxima, f/', from: 'en angular', to: 'en tele' },
    get closest() {
      return byUnit({ m: 'Distancia mínima de enfoque,\u00a0m', ft: 'Distancia mínima de enfoque,\u00a0ft' });
    },
    factor: 'Factor',
  },
  arrows: {
    label: 'Flechas junto a la luz de enfoque',
    is: { absent: 'Sin flechas', 'right-is-up': 'Flecha derecha: subir, hacia +', 'right-is-down': 'Flecha derecha: bajar, hacia \u2212' },
  },
  zoomStore: { label: 'De un zoom guarda', is: { one: 'un valor', two: 'un valor por extremo' } },
  copies: {
    label: 'Dos objetivos iguales',
    is: { 'not known': 'no se sabe', 'told apart': 'se distinguen', 'share a value': 'comparten un valor' },
  },
  trigger: { label: 'El enfoque empieza con', is: { 'half-press': 'la media pulsación', 'rear button': 'un botón trasero' } },
  manualFocus: {
    label: 'El enfoque manual se elige',
    is: { 'not known': 'no se sabe', 'on the lens': 'en el objetivo', 'on the body': 'en el cuerpo', 'on both': 'en ambos' },
  },
  choices: 'Flechas, botón, zooms y más',
  card: 'Ficha para la bolsa, imprimible',
  happened: {
    open: 'Anotar firmware nuevo o taller',
    form: 'Qué ha ocurrido',
    what: 'Qué ha ocurrido',
    is: { firmware: 'Firmware nuevo', service: 'Taller' },
    note: 'Nota',
    save: 'Guardar la nota',
    saved: 'Guardada. Lo medido antes queda pendiente de volver a medir.',
  },
  photograph: {
    title: 'Tomar los datos de una foto',
    choose: 'Una foto',
    drop: 'Elíjala o suéltela aquí.',
    stays: 'Se lee en este dispositivo y no se envía a ninguna parte.',
    use: 'Usar lo marcado',
    used: 'Los datos están en el equipo.',
    fault: {
      gone: 'No se puede leer este archivo. Compruebe que siga en su sitio y vuelva a elegirlo.',
      'no photograph': 'Este archivo no es una foto que se pueda leer aquí. Elija un JPEG tal como lo guardó la cámara.',
      'no camera data': 'Esta foto no contiene datos de la cámara. Elija una tal como la guardó la cámara.',
      'camera data unread': 'No se pueden leer los datos de la cámara en esta foto. Elija otra.',
    },
    openSituation: 'Abrir su situación en el cuaderno',
    read: ({ taken, focalLength, aperture, distance }, body, lens) =>
      [
        taken !== null && `Tomada el ${write.day(taken)}.`,
        focalLength !== null && `A ${write.millimetres(focalLength)}.`,
        aperture !== null && `f/${write.number(aperture, 1)}.`,
        distance !== null && `Enfocada a ${write.distance(distance)}.`,
        body === null ? 'El cuerpo aún no está en su equipo.' : `Cuerpo de su equipo: ${body}.`,
        lens === null ? 'El objetivo aún no está en su equipo.' : `Objetivo de su equipo: ${lens}.`,
      ].filter((sentence) => sentence !== false),
    offer: (offer) => {
      switch (offer.field) {
        case 'model':
          return offer.to === 'body' ? `Modelo del cuerpo: ${offer.value}` : `Modelo del objetivo: ${offer.value}`;
        case 'serial':
          return offer.to === 'body' ? `Número de serie del cuerpo: ${offer.value}` : `Número de serie del objetivo: ${offer.value}`;
        case 'focal':
          return `Distancia focal del objetivo: ${range(offer.value)}\u00a0mm`;
        case 'widest':
          return `Abertura máxima del objetivo: f/${range(offer.value)}`;
        case 'focalLength':
          return `Distancia focal: ${write.millimetres(offer.value)}`;
        case 'distance':
          return `Distancia: ${write.distance(offer.value)}`;
      }
    },
    body: 'Cuerpo',
    lens: 'Objetivo',
  },
  fault: FIELD_FAULT,
  unsaved: (fault) => {
    switch (fault.is) {
      case 'changed elsewhere':
        return `${THIS[fault.list]} ha cambiado en otra ventana. Salga, vuelva a entrar y haga el cambio.`;
      case 'gone':
        return `${THIS[fault.list]} ya no está aquí. Vuelva a cargar la lista.`;
      case 'situation lacks':
        return LACKS[fault.what];
    }
  },
};
