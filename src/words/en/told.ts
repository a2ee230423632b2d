// English: whose sweep it is.
import { writeSteps } from '../../sweep/scale.ts';
import { byUnit } from '../countryInUse.ts';
import { line } from '../line.ts';
import type { Part, ToldWords } from '../toldWords.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const PARTS: Readonly<Record<Part, string>> = { body: 'Body', lens: 'Lens', length: 'Focal length', distance: 'Distance', scale: 'Range', more: 'More' };

export const words: ToldWords = {
  line: 'What the sweep is about',
  parts: PARTS,
  open: (part) => `${PARTS[part]}: not told yet`,
  is: (part, value) => `${PARTS[part]}: ${value}`,
  chip: {
    lens: (lens, converter) => (converter === null ? lens : `${lens} + ${converter}`),
    length: write.millimetres,
    distance: (length) => write.distance(length),
    scale: ({ min, max, step }) => (step === 1 ? `${writeSteps(min)}…${writeSteps(max)}` : `${writeSteps(min)}…${writeSteps(max)} by ${write.number(step)}`),
    all: line,
  },
  done: 'Done',
  fewer: 'Close',
  body: { choose: 'Body', another: 'Another body…', name: 'Name of the body', hint: 'Your own name for it.' },
  lens: { choose: 'Lens', another: 'Another lens…', name: 'Name of the lens', hint: 'With its focal length, such as “Corvid 85”.' },
  length: {
    field: 'Focal length, mm',
    hint: 'As engraved on the lens.',
    converted: 'As engraved on the lens, without the converter.',
    ends: 'Which end of the zoom?',
  },
  distance: {
    get field() {
      return byUnit({ m: 'Distance to the target, m', ft: 'Distance to the target, ft' });
    },
    hint: 'Use the distance you shoot at. If left empty, it is 50 focal lengths, which is common practice.',
  },
  scale: { legend: 'Range of corrections', from: 'From', to: 'to', step: 'step' },
  arrows: {
    label: 'Arrows beside the focus light',
    is: { absent: 'No arrows', 'right-is-up': 'Right arrow: go up, towards +', 'right-is-down': 'Right arrow: go down, towards \u2212' },
  },
  converter: { label: 'Converter', none: 'None' },
  subject: (subject) => ({ lens: subject.lens, details: line([place(subject), subject.body]) }),
  unnamed: ({ lens, body, focalLength }) => ({
    lens: lens?.name ?? 'Not named yet',
    details: line([focalLength !== null && write.millimetres(focalLength), body?.name ?? null]) || 'Name it before you leave its result',
  }),
  whose: {
    title: 'Whose result is it?',
    body: 'Body',
    lens: 'Lens, with its focal length',
    length: 'Focal length, mm',
    hint: 'Such as “Corvid 85 f/1.8”.',
    ends: 'Which end of the zoom was it?',
    keep: 'Keep it under this name',
    later: 'It is kept without a name too. You can name it later.',
    missing: {
      body: 'Name the body too.',
      lens: 'Name the lens.',
      length: 'Enter the focal length, or put it into the name of the lens.',
    },
  },
};
