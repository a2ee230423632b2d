// A camera body, with everything that decides what a correction stored in it means: its scale and arrows, how many
// values it keeps for a zoom, how many lenses it remembers, and whether two copies of one lens share a value.
import * as v from 'valibot';
import { Scale, USUAL_SCALE } from '../sweep/scale.ts';
import { ArrowDisplay } from '../sweep/verdict.ts';
import type { Moment } from '../units.ts';
import { fault } from './fault.ts';
import { Engraved, kept, Name } from './words.ts';

const side = v.pipe(
  v.number(fault('no sensor size')),
  v.minValue(4, fault('sensor too small')),
  v.maxValue(70, fault('sensor too large')),
  v.brand('Millimetres'),
);

/** The sensor's size: with it, the optics know what is sharp enough. */
const Sensor = v.object({ width: side, height: side });

/** Does the body keep one correction for a zoom, or one for each end? */
const ZoomStore = v.picklist(['one', 'two']);

/** Does the body keep a value for each copy of a lens, or one for all copies of that model? */
const Copies = v.picklist(['told apart', 'share a value', 'not known']);

/** What lights the focus light: on a body set to a rear button, the half-press does not. */
const FocusTrigger = v.picklist(['half-press', 'rear button']);

/** Where focus is switched to manual once it is critical. */
const ManualFocusSwitch = v.picklist(['on the lens', 'on the body', 'on both', 'not known']);

export const Body = v.object({
  ...kept,
  name: Name,
  /** As the body writes it into photographs. */
  model: Engraved,
  serial: Engraved,
  sensor: v.nullable(Sensor),
  scale: Scale,
  arrows: ArrowDisplay,
  zoomStore: ZoomStore,
  /** How many lenses it remembers; null where that is not known. */
  remembers: v.nullable(
    v.pipe(
      v.number(fault('remembers no number')),
      v.integer(fault('remembers no number')),
      v.minValue(1, fault('remembers too few')),
      v.maxValue(1000, fault('remembers too many')),
    ),
  ),
  copies: Copies,
  trigger: FocusTrigger,
  manualFocus: ManualFocusSwitch,
});
export type Body = v.InferOutput<typeof Body>;

/** What a body starts as when nothing but its name is known: the usual scale (common practice, no source). */
export const newBody = (id: string, name: string, changed: Moment): Body => ({
  id,
  changed,
  retired: null,
  name,
  model: null,
  serial: null,
  sensor: null,
  scale: USUAL_SCALE,
  arrows: 'absent',
  zoomStore: 'one',
  remembers: null,
  copies: 'not known',
  trigger: 'half-press',
  manualFocus: 'not known',
});
