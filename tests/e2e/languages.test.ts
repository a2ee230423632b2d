// Contract of the screens beside a sweep and of all its phases in every language (languages/contracts.ts).
import { holdIn } from './languages/contracts.ts';
import { tourOfPanel } from './languages/tour.ts';
import { besideSweep } from './routes/besideSweep.ts';
import { phases } from './routes/phases.ts';

holdIn([
  ['the screens beside a sweep, empty and in use', () => tourOfPanel(besideSweep)],
  ['every phase of a sweep, its troubles and its ends', () => tourOfPanel(phases)],
]);
