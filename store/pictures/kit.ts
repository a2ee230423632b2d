// The invented kit of the pictures, as a logbook lies in the browser's storage: one body, and what its lenses were measured to be.
import { USUAL_SETTINGS } from '../../src/usualSettings.ts';
import { DAY, libraryWith, sweepRecord } from '../../tests/logbook/libraryWith.ts';

const BODY = 'Velde M1';

interface Measured {
  readonly id: string;
  readonly lens: string;
  readonly widest: number;
  readonly focalLength: number;
  readonly band: readonly [number, number];
  readonly daysAgo: number;
  /** The value in the camera; null where none is entered yet. */
  readonly entered: number | null;
}

const MEASURED: readonly Measured[] = [
  { id: 'c85', lens: 'Corvid 85 f/1.8', widest: 1.8, focalLength: 85, band: [3, 9], daysAgo: 2, entered: 6 },
  { id: 'c135', lens: 'Corvid 135 f/2', widest: 2, focalLength: 135, band: [-7, -3], daysAgo: 2, entered: -5 },
  { id: 'o35', lens: 'Orrin 35 f/2', widest: 2, focalLength: 35, band: [-4, 8], daysAgo: 12, entered: 2 },
  { id: 'o50', lens: 'Orrin 50 f/1.4', widest: 1.4, focalLength: 50, band: [-1, 5], daysAgo: 12, entered: null },
  { id: 'o200', lens: 'Orrin 200 f/2.8', widest: 2.8, focalLength: 200, band: [8, 12], daysAgo: 30, entered: 10 },
];

const subjectOf = ({ id, lens, focalLength }: Measured) => ({ situation: id, body: BODY, lens, focalLength, distance: 50 * focalLength });

/** What of the body is told: pictures are measured by the size of its sensor. */
export const FULL_FRAME = { width: 36, height: 24 };

export function storedKit(now: number, sensor: typeof FULL_FRAME): Record<string, unknown> {
  const { kit, records, entries } = libraryWith({
    bodies: [{ id: 'b', name: BODY, model: BODY, sensor }],
    lenses: MEASURED.map(({ id, lens, focalLength, widest }) => ({
      id,
      name: lens,
      focal: { from: focalLength, to: focalLength },
      widest: { from: widest, to: widest },
    })),
    situations: MEASURED.map(({ id, focalLength }) => ({ id, lens: id, focalLength, distance: 50 * focalLength })),
    records: MEASURED.map((one) => sweepRecord(`of-${one.id}`, now - one.daysAgo * DAY, ...one.band, { subject: subjectOf(one) })),
    entries: MEASURED.flatMap((one) =>
      one.entered === null
        ? []
        : [{ id: `in-${one.id}`, at: now - one.daysAgo * DAY + 60_000, subject: subjectOf(one), value: one.entered, record: `of-${one.id}` }],
    ),
  });
  const under = (kind: string, items: readonly { id: string }[]) => items.map((item) => [`${kind}:${item.id}`, item] as const);
  const all = { version: 3, kit, ...Object.fromEntries([...under('record', records), ...under('entry', entries)]) };
  return JSON.parse(JSON.stringify(all)) as Record<string, unknown>;
}

/** Someone who has swept before, is not reminded of anything, and hears the panel. */
export const settingsFor = (screens: string, theme: string) => ({
  ...USUAL_SETTINGS,
  soundChecked: true,
  coached: 99,
  logbook: { ...USUAL_SETTINGS.logbook, remind: false },
  language: { screens, voice: 'screens' },
  look: { theme, far: false },
});
