// A kit with every arrangement that matters: zooms, converters, what was put away, what is not known, and a stand-in.
import { libraryWith } from '../logbook/libraryWith.ts';

const SITUATIONS = [
  { id: 's' },
  { id: 's2', lens: 'l2', focalLength: 50, distance: 2500 },
  { id: 's3', converter: 'c', distance: 5950 },
  { id: 's4', converter: 'c', focalLength: 85, distance: 6000 },
  { id: 's5', body: 'b2', lens: 'l3', retired: 7 },
  { id: 's6', body: 'x', lens: 'y', converter: 'z' },
  { id: 's7', body: 'b2', lens: 'l2', standIn: true },
];
export const { kit } = libraryWith({
  bodies: [{ id: 'b' }, { id: 'b2', name: 'Velde M2' }],
  lenses: [{ id: 'l' }, { id: 'l2', name: 'Orrin 50 f/2' }, { id: 'l3', name: 'Orrin 24-70 f/4' }],
  converters: [{ id: 'c' }],
  situations: SITUATIONS,
});
