// What may be wrong with a piece of kit, as data. The catalogue has a sentence for each that says what to do.

/** What does not fit a field, by the name that its schema gives it. */
export const FIELD_FAULTS = [
  'no name',
  'name too long',
  'engraving empty',
  'engraving too long',
  'note too long',
  'no focal length',
  'no distance',
  'no sensor size',
  'sensor too small',
  'sensor too large',
  'remembers no number',
  'remembers too few',
  'remembers too many',
  'no aperture',
  'aperture too wide',
  'aperture too narrow',
  'focal lengths turned round',
  'no factor',
  'factor too small',
  'factor too large',
  'no lowest correction',
  'no highest correction',
  'no step',
  'scale too short',
  'step does not divide',
  'arrows not chosen',
  'does not fit',
] as const;
export type FieldFault = (typeof FIELD_FAULTS)[number];

/** The fault of a field, where a schema wants a message. */
export const fault = (name: FieldFault): FieldFault => name;
