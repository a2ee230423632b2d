// What may be wrong with a practice camera, by its name: part of the plan of a practice sweep.
import * as v from 'valibot';

export const Oddity = v.picklist(['flickers everywhere', 'never lights', 'lights everywhere', 'hole in the band', 'arrows turn round', 'focus moves']);
export type Oddity = v.InferOutput<typeof Oddity>;
