// What to enter for a lens on a body: in the panel and on the page to print.
import type { Evidence, MemoryPlace } from '../logbook/entering/advice.ts';
import type { Band, Fit } from '../logbook/entering/band.ts';
import type { Choice } from '../logbook/entering/oneValue.ts';
import type { ShownThere } from '../logbook/entering/shown.ts';
import type { TwoValues } from '../logbook/entering/twoValues.ts';
import type { Body } from '../kit/body.ts';
import type { Lens } from '../kit/lens.ts';
import type { Moment } from '../units.ts';

interface Pair {
  readonly body: Body;
  readonly lens: Lens;
}

export interface EnteringWords {
  readonly title: string;
  readonly gone: string;
  /** Whose value it is, and what the body keeps of it. */
  readonly about: (pair: Pair) => readonly string[];
  readonly bare: string;
  readonly behind: (converter: string) => string;
  readonly toPrint: string;
  readonly entered: string;
  readonly enteredAt: (focalLength: number) => string;
  readonly weigh: {
    readonly legend: string;
    readonly by: Readonly<Record<'worst share' | 'use', { readonly label: string; readonly note: string }>>;
    readonly weightOf: (band: Band, converter: boolean) => string;
    readonly noUse: string;
  };
  readonly unknown: string;
  readonly missingEnd: (focalLength: number) => string;
  /** What stands before a value. */
  readonly enter: string;
  readonly wide: (focalLength: number) => string;
  readonly tele: (focalLength: number) => string;
  /** `weighed`: a value would serve all, but the weights given speak for another. */
  readonly serves: (outside: number, all: number, weighed: boolean) => string;
  readonly table: { readonly at: string; readonly off: string; readonly share: string };
  readonly at: (band: Band) => string;
  readonly off: (fit: Fit) => string;
  readonly share: (fit: Fit) => string;
  /** What the body would use between the two ends of a zoom. */
  readonly middle: (middle: TwoValues['middles'][number]) => readonly string[];
  readonly trade: { readonly title: string; readonly option: (choice: Choice) => readonly string[] };
  /** What photographs say of one situation: the bracket's centre, and then the check. */
  readonly shown: { readonly title: string; readonly bracket: (there: ShownThere) => readonly string[]; readonly check: (there: ShownThere) => string };
  readonly uncounted: (list: MemoryPlace['uncounted']) => string;
  /** `fNumber`: of the lens with it, null where the lens alone is not known. */
  readonly converter: (fNumber: number | null) => readonly string[];
  readonly chart: {
    readonly one: Readonly<Record<'focal length' | 'distance', readonly string[]>>;
    readonly two: readonly string[];
    readonly mark: Readonly<Record<'focal length' | 'distance', (length: number) => string>>;
  };
  readonly page: {
    readonly title: (pair: Pair) => string;
    readonly about: (pair: Pair, printed: Moment) => readonly string[];
    readonly restsOn: (weighed: boolean) => string;
    /** `use`: how much it counts, null where all count alike. */
    readonly evidence: (evidence: Evidence, use: number | null) => readonly string[];
    readonly lensGone: string;
    readonly gone: string;
  };
}
