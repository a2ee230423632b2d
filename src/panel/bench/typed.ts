// What was typed and picked at the bench, and how its rig was set up. It outlives the screens, so that a look elsewhere
// loses nothing.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { BenchRecord } from '../../optics/setUp/reading.ts';
import type { BenchSubject } from './subject.ts';

/** Every field as it stands on the screen. */
export type Typed = Readonly<Record<keyof typeof UNTYPED, string>>;
export type BenchField = keyof Typed;

export const UNTYPED = {
  unit: 'm',
  from: 'film plane',
  distance: '',
  reach: '',
  closest: '',
  aperture: '',
  converter: '',
  sensor: '0',
  pixels: '6000',
  area: '2.5',
  confusion: 'diagonal',
  ownConfusion: '0.03',
  worth: '0.125',
  scalePixels: '',
  printed: '',
  iso: '',
  metered: '',
  shutter: '',
  fine: '7',
  plenty: '9',
  lighting: 'daylight',
  mains: '50',
  squareBy: 'mirror',
  mirror: '',
  left: '',
  right: '',
  top: '',
  bottom: '',
  width: '',
  height: '',
  old: '',
  celsius: '',
  paper: 'A4',
  version: 'long',
};

/** What the kit has, as far as the set-up walk depends on it. */
export const KIT_TRAITS = {
  bodyStabiliser: false,
  liveView: true,
  rearButton: false,
  manualAtBody: false,
  lensStabiliser: false,
  zoom: false,
  heavy: false,
};
export type KitTraits = Readonly<typeof KIT_TRAITS>;

/** How a rig was set up, and for what. */
export interface Noted {
  readonly subject: BenchSubject;
  readonly bench: BenchRecord;
}

export interface BenchStore {
  readonly typed: ReadonlySignal<Typed>;
  readonly traits: ReadonlySignal<KitTraits>;
  readonly noted: ReadonlySignal<Noted | null>;
  type(patch: Partial<Typed>): void;
  tick(patch: Partial<KitTraits>): void;
  note(noted: Noted | null): void;
}

export function newBench(): BenchStore {
  const typed = signal<Typed>(UNTYPED);
  const traits = signal<KitTraits>(KIT_TRAITS);
  const noted = signal<Noted | null>(null);
  return {
    typed,
    traits,
    noted,
    type: (patch) => (typed.value = { ...typed.value, ...patch }),
    tick: (patch) => (traits.value = { ...traits.value, ...patch }),
    note: (next) => (noted.value = next),
  };
}
