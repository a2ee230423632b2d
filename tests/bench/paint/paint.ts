// How soon the panel is seen: ours and a trivial one, whose page is a single button, opened in turns in one run. Both wait for
// the browser; only how much longer ours takes is held to a bound, whatever the machine.
import { most, shown, type Family } from '../figure.ts';
import { opening, type Opening } from './opening.ts';

const TURNS = 15;
const TRIVIAL = 'tests/bench/paint/trivial';
const OURS = 'dist/chromium';

export const paint: Family = {
  name: 'paint',
  needs: ['chromium'],
  async run({ tell }) {
    tell(`a trivial panel and ours in turns, ${TURNS} times each, every time in a fresh browser`);
    const trivial: Opening[] = [];
    const ours: Opening[] = [];
    for (let turn = 0; turn < TURNS; turn++) {
      trivial.push(await opening(TRIVIAL));
      ours.push(await opening(OURS));
    }
    const one = median(trivial.map(({ first }) => first));
    const other = median(ours.map(({ first }) => first));
    return [
      shown('trivial panel: click to first content, median, ms', one),
      shown('ours: click to first content, median, ms', other),
      most('ours in trivial panels', other / one, 1.3),
      shown('ours: click to the screen with all that is stored, median, ms', median(ours.map(({ whole }) => whole ?? Number.NaN))),
    ];
  },
};

const median = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;
