// Everything a person writes into kit and logbook besides sweeps, in one part that is read while the store is being read.
import type { Moment } from '../../units.ts';
import { createKitForms, type KitForms } from './kitForms.ts';
import type { Library } from './library.ts';
import { createWritings, type Writings } from './writings.ts';

export type Desk = KitForms & Writings;

export const createDesk = (library: Library, newId: () => string, now: () => Moment): Desk => ({
  ...createKitForms(library, newId, now),
  ...createWritings(library, newId),
});
