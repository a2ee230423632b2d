// What pictures are for: each shows what it shows, or all of them together check a value or measure a bracket of several.
export const USES = ['one', 'check', 'bracket'] as const;
export type PictureUse = (typeof USES)[number];
