// English: screens without content.
import type { EmptyWords } from '../emptyWords.ts';

const STATIONS = 'Drawing: three places for the tripod in a row. The first is done, the second is next.';

export const words: EmptyWords = {
  logbook: {
    sentence: 'Once a sweep is finished, its lens stands here with the value to enter, the band and the centre.',
    drawn: 'Drawing: two lenses, each with its value and its band on the range of corrections.',
    begin: 'Begin with a lens',
  },
  plan: {
    sentence: 'A plan is made from your kit: what to measure, in the order that moves the tripod least.',
    drawn: STATIONS,
    begin: 'To the kit',
  },
  planned: {
    sentence: 'Choose what to measure, and the plan puts it in the order that moves the tripod least and changes kit least.',
    drawn: STATIONS,
  },
  kit: {
    sentence: 'Your bodies and lenses will stand here, so that every value is kept with what it belongs to.',
    drawn: 'Drawing: a camera body and a lens that fits it.',
    begin: 'Add a body',
  },
  photographs: {
    sentence: 'Photograph the printed target with autofocus at full aperture, without sharpening, and bring the pictures in here.',
    drawn: 'Drawing: a picture of the target and the ramp, with a line where focus fell.',
  },
  files: {
    sentence: 'Save the kit and the logbook in a file here, and bring them back from one.',
    drawn: 'Drawing: a file and the logbook, with an arrow each way.',
  },
};
