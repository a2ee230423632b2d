// The page for a workshop: whose pair, what was found, how it was measured, and every hold.
import type { Scale } from '../sweep/scale.ts';
import type { Arrows, Light } from '../sweep/verdict.ts';
import type { Millimetres, Moment, Seconds } from '../units.ts';
import type { ShownWords } from './shownWords.ts';

export interface WorkshopWords {
  readonly title: string;
  readonly gone: string;
  readonly practice: string;
  readonly pair: (pair: { readonly lens: string; readonly body: string }) => string;
  readonly how: {
    readonly title: string;
    readonly focused: (holdTime: Seconds) => string;
    readonly counts: string;
    readonly aside: string;
    readonly decides: string;
  };
  readonly holds: { readonly title: string; readonly inFocus: (count: number) => string; readonly aside: (count: number) => string };
  readonly photographs: ShownWords & { readonly title: string };
  readonly bench: string;
  readonly facts: Readonly<Record<'body' | 'lens' | 'focalLength' | 'distance' | 'range' | 'measured', string>>;
  readonly named: (name: string, serial: string | null) => string;
  readonly length: (focalLength: Millimetres) => string;
  readonly distance: (distance: Millimetres) => string;
  readonly range: (scale: Scale) => string;
  readonly day: (at: Moment) => string;
  readonly sense: string;
  readonly table: Readonly<Record<'hold' | 'value' | 'light' | 'arrows' | 'counts', string>>;
  readonly number: (hold: number) => string;
  readonly light: Readonly<Record<Light, string>>;
  readonly arrows: Readonly<Record<Arrows, string>>;
  readonly counts: Readonly<Record<'in' | 'out', string>>;
}
