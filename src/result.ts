// How something can end that may fail: a value, or what was wrong. In pure code that is data, of which the catalogue writes the sentence;
// where nothing is said beside `Result<Value>`, it is that sentence, which tells the person what to do. Nothing here throws.
export type Failed<Fault = string> = { readonly ok: false; readonly fault: Fault };
/** Bare, where it only counts whether it worked. */
export type Result<Value = unknown, Fault = string> = { readonly ok: true; readonly value: Value } | Failed<Fault>;

export const got = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({ ok: true, value });
export const failed = <Fault>(fault: Fault): Failed<Fault> => ({ ok: false, fault });
/** It is done, and there is nothing to hand over. */
export const DONE = got(undefined);
