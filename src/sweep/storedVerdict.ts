// What was seen in one hold, as it is stored with every sweep.
import * as v from 'valibot';

/** The focus light during one hold. `untold`: it failed, and the person did not say how. */
export const Light = v.picklist(['steady', 'late', 'flicker', 'dark', 'untold']);
export type Light = v.InferOutput<typeof Light>;

/**
 * The rangefinder arrows during one hold. `left`, `right`: that one alone or clearly more often;
 * `balanced`: both evenly; `lopsided`: both, one more often, without saying which.
 */
export const Arrows = v.picklist(['none', 'left', 'right', 'balanced', 'lopsided']);
export type Arrows = v.InferOutput<typeof Arrows>;

export const Verdict = v.object({ light: Light, arrows: Arrows });
export type Verdict = v.InferOutput<typeof Verdict>;

/** Which way the right arrow sends the correction. Makers differ, so it is a setting of the body. */
const ArrowSense = v.picklist(['right-is-up', 'right-is-down']);

/** What a body shows beside its focus light. */
export const ArrowDisplay = v.picklist(['absent', ...ArrowSense.options]);
export type ArrowDisplay = v.InferOutput<typeof ArrowDisplay>;
