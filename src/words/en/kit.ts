// English: the kit.
import type { Lens } from '../../kit/lens.ts';
import type { KitList } from '../../kit/change.ts';
import { byUnit } from '../countryInUse.ts';
import type { KitWords } from '../kitWords.ts';
import { FIELD_FAULT } from './fieldFaults.ts';
import { write } from './write.ts';

const THIS: Readonly<Record<KitList, string>> = {
  bodies: 'This body',
  lenses: 'This lens',
  converters: 'This converter',
  situations: 'This situation',
};

const LACKS = {
  body: 'Choose a body for this situation first.',
  lens: 'Choose a lens for this situation first.',
  converter: 'Choose a converter for this situation first.',
} as const;

const named = (lenses: readonly Pick<Lens, 'name' | 'serial'>[]): string =>
  write.list(lenses.map(({ name, serial }) => (serial === null ? name : `${name} (${serial})`)));

const range = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? write.number(from, 1) : `${write.number(from, 1)}\u2013${write.number(to, 1)}`;

export const words: KitWords = {
  title: 'Kit',
  lists: {
    body: { title: 'Bodies', add: 'Add a body', unnamed: 'New body' },
    lens: { title: 'Lenses', add: 'Add a lens', unnamed: 'New lens' },
    converter: { title: 'Converters', add: 'Add a converter', unnamed: 'New converter' },
  },
  none: 'None yet.',
  retired: (count) => `Retired (${write.number(count)})`,
  save: 'Save',
  retire: 'Retire, and keep everything measured with it',
  bringBack: 'Bring back into use',
  warning: (warning) => {
    const body = warning.body.name;
    if (warning.about === 'memory') {
      const left = write.count(warning.left, { one: 'one place is', other: warning.left === 0 ? 'no place is' : '# places are' });
      return `${body} remembers ${write.count(warning.remembers, { one: '# lens', other: '# lenses' })}, and ${left} left. Delete one that you no longer use from its memory before you enter another.`;
    }
    const lenses = named(warning.lenses);
    return warning.surely
      ? `${body} cannot tell ${lenses} apart. They share one stored value, so enter that of the one in use.`
      : `${lenses} may share one stored value on ${body}. Look in its manual, then set it in the kit.`;
  },
  fields: {
    name: 'Name',
    yourName: 'Your own name for it.',
    serial: 'Serial number',
    model: 'Model, as in its photographs',
    sensor: { legend: 'Sensor, mm', width: 'width', height: 'height' },
    scale: { legend: 'Range of corrections', from: 'From', to: 'to', step: 'step' },
    remembers: { label: 'How many lenses it remembers', hint: 'Leave it empty if you do not know. It is in the manual.' },
    focal: { legend: 'Focal length, mm', hint: 'Leave the longest empty if the lens does not zoom.', from: 'shortest', to: 'longest' },
    widest: { legend: 'Widest aperture, f/', from: 'at the shortest', to: 'at the longest' },
    get closest() {
      return byUnit({ m: 'Closest focus, m', ft: 'Closest focus, ft' });
    },
    factor: 'Factor',
  },
  arrows: {
    label: 'Arrows beside the focus light',
    is: { absent: 'No arrows', 'right-is-up': 'Right arrow: go up, towards +', 'right-is-down': 'Right arrow: go down, towards \u2212' },
  },
  zoomStore: { label: 'For a zoom, it stores', is: { one: 'one value', two: 'a value for each end' } },
  copies: { label: 'Two copies of one lens', is: { 'not known': 'not known', 'told apart': 'are told apart', 'share a value': 'share one value' } },
  trigger: { label: 'Focus starts with', is: { 'half-press': 'the half-press', 'rear button': 'a rear button' } },
  manualFocus: {
    label: 'Manual focus is switched',
    is: { 'not known': 'not known', 'on the lens': 'on the lens', 'on the body': 'on the body', 'on both': 'on both' },
  },
  choices: 'Arrows, button, zooms and copies',
  card: 'Card for the bag, to print',
  happened: {
    open: 'Note new firmware or service',
    form: 'What happened',
    what: 'What happened',
    is: { firmware: 'New firmware', service: 'Serviced' },
    note: 'Note',
    save: 'Save the note',
    saved: 'Saved. What was measured before is due again.',
  },
  photograph: {
    title: 'Use details from a photograph',
    choose: 'A photograph',
    drop: 'Choose it, or drop it here.',
    stays: 'It is read on this computer and sent nowhere.',
    use: 'Use ticked details',
    used: 'The details are in the kit.',
    fault: {
      gone: 'This file cannot be read. Check that it is still there, then choose it again.',
      'no photograph': 'This file is no photograph that can be read here. Choose a JPEG as the camera wrote it.',
      'no camera data': 'This photograph holds no camera data. Choose one as the camera wrote it.',
      'camera data unread': 'The camera data of this photograph cannot be read. Choose another one.',
    },
    openSituation: 'Open its situation in the logbook',
    read: ({ taken, focalLength, aperture, distance }, body, lens) =>
      [
        taken !== null && `Taken on ${write.day(taken)}.`,
        focalLength !== null && `At ${write.millimetres(focalLength)}.`,
        aperture !== null && `f/${write.number(aperture, 1)}.`,
        distance !== null && `Focused at ${write.distance(distance)}.`,
        body === null ? 'The body is not in your kit yet.' : `Body in your kit: ${body}.`,
        lens === null ? 'The lens is not in your kit yet.' : `Lens in your kit: ${lens}.`,
      ].filter((sentence) => sentence !== false),
    offer: (offer) => {
      switch (offer.field) {
        case 'model':
          return offer.to === 'body' ? `Body model: ${offer.value}` : `Lens model: ${offer.value}`;
        case 'serial':
          return offer.to === 'body' ? `Body serial number: ${offer.value}` : `Lens serial number: ${offer.value}`;
        case 'focal':
          return `Lens focal length: ${range(offer.value)}\u00a0mm`;
        case 'widest':
          return `Lens widest aperture: f/${range(offer.value)}`;
        case 'focalLength':
          return `Focal length: ${write.millimetres(offer.value)}`;
        case 'distance':
          return `Distance: ${write.distance(offer.value)}`;
      }
    },
    body: 'Body',
    lens: 'Lens',
  },
  fault: FIELD_FAULT,
  unsaved: (fault) => {
    switch (fault.is) {
      case 'changed elsewhere':
        return `${THIS[fault.list]} was changed in another window. Open it again, then make your change.`;
      case 'gone':
        return `${THIS[fault.list]} is no longer here. Reload the list.`;
      case 'situation lacks':
        return LACKS[fault.what];
    }
  },
};
