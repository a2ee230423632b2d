// What comes of something that may fail: the value, or one sentence for the person that says what to do.
export type Tried<Value> =
  { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly sentence: string };

export const done = <Value>(value: Value): Tried<Value> => ({ ok: true, value });
export const failed = (sentence: string): Tried<never> => ({ ok: false, sentence });
