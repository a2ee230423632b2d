// How sure a person wants to be before a sweep may end: chosen beforehand, and stored with the plan.
import * as v from 'valibot';

export const Care = v.picklist(['quick', 'standard', 'thorough']);
export type Care = v.InferOutput<typeof Care>;
