// English: what to enter for a lens on a body.
import type { MemoryPlace } from '../../logbook/entering/advice.ts';
import type { Fit } from '../../logbook/entering/band.ts';
import type { ShownThere } from '../../logbook/entering/shown.ts';
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import type { EnteringWords } from '../enteringWords.ts';
import { correctionBetween, focusFell, marginOf } from './focusFell.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

const KEEPS = { one: 'The body keeps one value for a lens.', two: 'The body keeps a value for each end of a zoom.' } as const;

const WHY: Readonly<Record<MemoryPlace['uncounted'][number]['why'], string>> = {
  'never measured': 'never measured',
  'only a value is known': 'only a value is known',
  'past the limit': 'the band runs past the limit',
  'beyond the scale': 'the band lies outside the range',
  'nothing held': 'no band found',
};

const CAME: Readonly<Record<Measured['by'], string>> = {
  sweep: 'Found in a sweep',
  'by hand': 'Put in by hand',
  'from a table': 'From a table',
  'from another computer': 'From another computer',
};

const CHECK = 'Check it with photographs there.';

const long = (focalLength: number): string => write.millimetres(millimetres(focalLength));
const where = ({ band }: Fit): string => place(band);
const missed = (fit: Fit): string => `${where(fit)} (${write.count(fit.past, { one: '# step past the end', other: '# steps past the end' }, 1)})`;

function lies(linear: Fit, logarithmic: Fit): readonly string[] {
  if (linear.inside && logarithmic.inside) return ['Both lie in its band.'];
  if (!linear.inside && !logarithmic.inside) return ['Neither lies in its band.', CHECK];
  return [linear.inside ? 'Only the first lies in its band.' : 'Only the second lies in its band.', CHECK];
}

function bracketSaid({ subject, bracket }: ShownThere): readonly string[] {
  if (bracket === null) return [];
  const { centre, at } = bracket;
  const head = `${place(subject)}: the bracket of ${write.day(at)} puts the centre at ${correctionBetween(centre)}.`;
  if (bracket.is === 'alone') return [head, ...(bracket.value === null ? ['It lies off the scale.'] : [])];
  const { band, difference } = bracket;
  if (bracket.is === 'agree')
    return [head, `That agrees with the band’s centre, ${write.signed(band, 1)}. Together they give ${correctionBetween(bracket.joint)}, which counts here.`];
  const apart = `${write.signed(difference.value, 1)} ± ${write.number(marginOf(difference), 1)} steps`;
  return [
    head,
    `That differs from the band’s centre, ${write.signed(band, 1)}, by ${apart}, so the band counts alone. Check the set-up, then measure both again.`,
  ];
}

function checkSaid({ subject, check }: ShownThere): string {
  if (check === null) return '';
  const { correction, bias, found, at } = check;
  const which = `${place(subject)}: the check of ${write.day(at)}`;
  return found === 'confirmed'
    ? `${which} confirmed ${writeSteps(correction)}.`
    : `${which} found a shift with ${writeSteps(correction)}: focus falls ${focusFell(bias)}.`;
}

export const words: EnteringWords = {
  title: 'What to enter',
  gone: 'This body or lens is no longer in the kit.',
  about: ({ body, lens }) => [`${pair({ lens: lens.name, body: body.name })}.`, KEEPS[body.zoomStore]],
  bare: 'Bare lens',
  behind: (converter) => `With ${converter}`,
  bands: 'How it stands in each band',
  toPrint: 'Page to print',
  entered: 'Mark as entered',
  enteredAt: (focalLength) => `Mark as entered at ${long(focalLength)}`,
  weigh: {
    legend: 'How to weigh them',
    by: {
      'worst share': { label: 'All alike', note: 'The worst of them is as good as it can be.' },
      use: { label: 'By use', note: 'What is used more counts more.' },
    },
    weightOf: (band, converter) => (converter ? `Use of ${place(band)}, with converter` : `Use of ${place(band)}`),
    noUse: 'Enter how much it is used, from 0 to 100. Until then it counts as 1.',
  },
  unknown: 'No band is known here yet. Measure it, or put in both ends of a band by hand.',
  missingEnd: (focalLength) => `This body keeps a value for each end of a zoom. Measure it at ${long(focalLength)} too. Until then, this is one value for all.`,
  enter: 'Enter',
  wide: (focalLength) => `Wide, ${long(focalLength)}:`,
  tele: (focalLength) => `Tele, ${long(focalLength)}:`,
  serves: (outside, all, weighed) => {
    if (outside === 0) return write.count(all, { one: 'It lies in the one band measured.', other: 'It lies in all # bands.' });
    return weighed
      ? `By the weights given, it lies outside ${write.number(outside)} of ${write.number(all)} bands.`
      : `No value lies in all ${write.number(all)} bands. This one is outside ${write.number(outside)} of them.`;
  },
  table: { at: 'Measured at', off: 'Off by', share: 'Of half-band' },
  at: place,
  off: ({ error }) => write.signed(error, 1),
  share: ({ share, inside, past }) => (inside ? `${write.percent(share)}, inside` : `${write.percent(share)}, outside by ${write.number(past, 1)}`),
  middle: ({ band, linear, logarithmic }) => [
    `At ${place(band)}, between the ends, the body would use ${write.signed(linear.value, 1)} if it goes by focal length, and ${write.signed(logarithmic.value, 1)} if it goes by its logarithm.`,
    'Makers do not publish which of the two.',
    `Measured: ${write.signed(band.centre, 1)}.`,
    ...lies(linear, logarithmic),
  ],
  trade: {
    title: 'What each value would serve',
    option: ({ value, fits }) => [
      `${writeSteps(value)} serves ${write.list(fits.filter(({ inside }) => inside).map(where))}.`,
      `It misses ${write.list(fits.filter(({ inside }) => !inside).map(missed))}.`,
    ],
  },
  shown: { title: 'What photographs showed', bracket: bracketSaid, check: checkSaid },
  uncounted: (list) => `Not counted: ${write.list(list.map((one) => `${place(one)} (${WHY[one.why]})`))}.`,
  converter: (fNumber) => ['The body keeps this apart from the bare lens.', ...(fNumber === null ? [] : [`The lens becomes f/${write.number(fNumber, 1)}.`])],
  chart: {
    one: {
      'focal length': ['Bars: the bands, by focal length.', 'Line: the value.', 'A hollow bar does not reach the line.'],
      distance: ['Bars: the bands, by distance.', 'Line: the value.', 'A hollow bar does not reach the line.'],
    },
    two: [
      'Bars: the bands, by focal length.',
      'Line: what the body would use if it goes by focal length.',
      'Dashed: if it goes by its logarithm.',
      'A hollow bar does not reach the line.',
    ],
    mark: { 'focal length': long, distance: (distance) => write.distance(millimetres(distance)) },
  },
  page: {
    title: ({ body, lens }) => pair({ lens: lens.name, body: body.name }),
    about: ({ body, lens }, printed) => [
      ...(body.serial === null ? [] : [`Body ${body.serial}.`]),
      ...(lens.serial === null ? [] : [`Lens ${lens.serial}.`]),
      `Printed ${write.day(printed)}.`,
      'Enter it as the camera’s manual says, then check it with photographs.',
    ],
    restsOn: (weighed) => (weighed ? 'What it rests on, weighed by use' : 'What it rests on'),
    evidence: ({ band, measured: { at, by, holds, interval, within } }, use) => [
      `${place(band)}: band from ${writeSteps(band.low)} to ${writeSteps(band.high)}.`,
      by === 'sweep' && holds !== null ? `${write.count(holds, { one: '# hold', other: '# holds' })}, ${write.day(at)}.` : `${CAME[by]}, ${write.day(at)}.`,
      ...(interval ? [`Centre between ${write.signed(interval.from, 1)} and ${write.signed(interval.to, 1)}, 95% sure.`] : []),
      ...(within === null ? [] : [`Within one step: ${write.chance(within)} sure.`]),
      ...(use === null ? [] : [`Counts ${write.number(use, 1)}.`]),
    ],
    lensGone: 'This lens is no longer in the kit. Close this page and open it again from the logbook.',
    gone: 'This is no longer in the kit. Close this page and open it again from the logbook.',
  },
};
