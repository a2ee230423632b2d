// Places where the change was looked into and shown to change nothing that can be told from outside. By file and by what the line
// says, so that an entry goes out of use when its line is rewritten.
export interface Same {
  readonly file: string;
  /** A piece of the line as it is written. */
  readonly line: string;
  readonly after: string;
  readonly why: string;
}

export const SAME: readonly Same[] = [
  {
    file: 'src/practice/pictures/mosaicSensor.ts',
    line: 'for (let x = 0; x < width; x += 1) {',
    after: '<=',
    why: 'One more draw of chance a row; the pixel that it lands on is written anew by the next row, or lies outside.',
  },
  {
    file: 'src/voice/ownWords/takeQuality.ts',
    line: 'if (clearanceOf(stretch) < LEAST_CLEARANCE)',
    after: '<=',
    why: 'No sound lies at 12 dB to the last digit of a logarithm.',
  },
  {
    file: 'src/photographs/darkSpots.ts',
    line: 'if (column > 0 && dark[pixel - 1] === 1) {',
    after: '(dark[pixel - 1] === 1)',
    why: 'Joins what touches the right border with what touches the left one; both are refused for touching it.',
  },
  {
    file: 'src/photographs/darkSpots.ts',
    line: 'if (column < width - 1 && dark[pixel + 1] === 1) {',
    after: '(dark[pixel + 1] === 1)',
    why: 'The same from the other side.',
  },
  {
    file: 'src/photographs/darkSpots.ts',
    line: 'if (pixel >= width && dark[pixel - width] === 1) {',
    after: '(dark[pixel - width] === 1)',
    why: 'Above the first row there is no pixel, which is not 1.',
  },
  {
    file: 'src/photographs/darkSpots.ts',
    line: 'if (pixel + width < dark.length && dark[pixel + width] === 1) {',
    after: '(dark[pixel + width] === 1)',
    why: 'Below the last row there is no pixel, which is not 1.',
  },
  {
    file: 'src/photographs/quad.ts',
    line: 'let best: [Point, Point] = [points[0]',
    after: '1',
    why: 'It begins with a pair of length none, which the first pair replaces by the one it began with.',
  },
  {
    file: 'src/voice/phonetic/commands.ts',
    line: 'leastDistance(heavy, phrase.weight) > FAR ?',
    after: '>=',
    why: 'What is left out for being farther than counts is farther by the exact distance, too.',
  },
];
