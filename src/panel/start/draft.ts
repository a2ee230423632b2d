// What the person has picked and typed on the start screen. It outlives the screen, so a look at the help loses nothing.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { Body, Converter, Kit, Lens, Situation } from '../../kit/kit.ts';
import type { LogRecord } from '../../logbook/record.ts';
import type { ArrowDisplay } from '../../sweep/verdict.ts';

/** Picked: an id of the kit, or `new` for what is typed below it; null while nothing was picked. */
type Picked = string | null;

export const NEW = 'new';
/** The lens straight on the body. */
export const BARE = 'bare';

export interface Draft {
  readonly body: Picked;
  readonly lens: Picked;
  /** An id of the kit, or `bare`. */
  readonly converter: Picked;
  readonly situation: Picked;
  readonly bodyName: string;
  readonly min: string;
  readonly max: string;
  readonly step: string;
  readonly arrows: ArrowDisplay;
  readonly lensName: string;
  /** Millimetres; null until it is typed, and then it no longer follows the lens. */
  readonly focalLength: string | null;
  /** Metres; null until it is typed, and then it no longer follows the focal length. */
  readonly distance: string | null;
  /** One sentence for each field that did not fit. */
  readonly faults: Readonly<Partial<Record<FieldName, string>>>;
}

export type FieldName = 'bodyName' | 'min' | 'max' | 'step' | 'scale' | 'lensName' | 'focalLength' | 'distance' | 'whole';

export const EMPTY_DRAFT: Draft = {
  body: null,
  lens: null,
  converter: null,
  situation: null,
  bodyName: '',
  min: '\u221220',
  max: '+20',
  step: '1',
  arrows: 'absent',
  lensName: '',
  focalLength: null,
  distance: null,
  faults: {},
};

export interface DraftStore {
  readonly draft: ReadonlySignal<Draft>;
  change(patch: Partial<Draft>): void;
}

export function newDraft(): DraftStore {
  const draft = signal(EMPTY_DRAFT);
  return { draft, change: (patch) => (draft.value = { ...draft.value, ...patch }) };
}

export interface Picks {
  /** What may be picked: everything that is not put away. */
  readonly bodies: readonly Body[];
  readonly lenses: readonly Lens[];
  readonly converters: readonly Converter[];
  readonly body: Body | null;
  readonly lens: Lens | null;
  /** Null where the lens is straight on the body. */
  readonly converter: Converter | null;
  readonly situations: readonly Situation[];
  /** Null where a new one is being typed. */
  readonly situation: Situation | null;
}

/** What is picked, and where nothing is yet: what was measured last, or else the only or first one there is. */
export function picksOf({ body, lens, converter, situation }: Draft, kit: Kit, records: readonly LogRecord[]): Picks {
  const [bodies, lenses, converters] = [inUse(kit.bodies), inUse(kit.lenses), inUse(kit.converters)];
  const last = kit.situations.find(({ id }) => id === records.find(({ practice }) => !practice)?.subject.situation);
  const pickedBody = pick(bodies, body, last?.body);
  const pickedLens = pick(lenses, lens, last?.lens);
  const between = converter ?? (last?.lens === pickedLens?.id ? last?.converter : null);
  const pickedConverter = converters.find(({ id }) => id === between) ?? null;
  const situations = inUse(kit.situations).filter(
    (one) => one.body === pickedBody?.id && one.lens === pickedLens?.id && one.converter === (pickedConverter?.id ?? null),
  );
  return {
    bodies,
    lenses,
    converters,
    body: pickedBody,
    lens: pickedLens,
    converter: pickedConverter,
    situations,
    situation: pick(situations, situation, last?.id),
  };
}

const inUse = <Kind extends { readonly retired: unknown }>(all: readonly Kind[]): Kind[] => all.filter(({ retired }) => retired === null);

function pick<Kind extends { readonly id: string }>(all: readonly Kind[], picked: Picked, last: string | undefined): Kind | null {
  if (picked === NEW) return null;
  return all.find(({ id }) => id === picked) ?? all.find(({ id }) => id === last) ?? all[0] ?? null;
}
