// The small fields every piece of kit is made of: ids, names, serials. Each names the fault where it does not fit.
import * as v from 'valibot';
import { Moment } from '../storedUnits.ts';
import { fault } from './fault.ts';

export const Id = v.pipe(v.string(), v.minLength(1), v.maxLength(100));

export const Name = v.pipe(v.string(), v.trim(), v.minLength(1, fault('no name')), v.maxLength(60, fault('name too long')));

/** What is engraved or written into photographs; null where nobody has looked. */
export const Engraved = v.nullable(v.pipe(v.string(), v.trim(), v.minLength(1, fault('engraving empty')), v.maxLength(60, fault('engraving too long'))));

/**
 * What every piece of kit and every situation carries. `changed` is when its fields were last set (0: before times were
 * kept), so that of two copies the newer is known; `retired` hides it from lists and keeps all that was measured
 * with it. A stand-in was made for a sweep whose owner had not said yet what it was about: it waits to be named.
 */
export const kept = { id: Id, changed: Moment, retired: v.nullable(Moment), standIn: v.exactOptional(v.literal(true)) };
