// How something can end that may fail: a value, or one sentence for the person that says what to do. Nothing here throws.
export type Failed = { readonly ok: false; readonly sentence: string };
/** Bare, where it only counts whether it worked. */
export type Result<T = unknown> = { readonly ok: true; readonly value: T } | Failed;

export const got = <T>(value: T): Result<T> => ({ ok: true, value });
export const failed = (sentence: string): Failed => ({ ok: false, sentence });
/** It is done, and there is nothing to hand over. */
export const DONE = got(undefined);

/** A value, or what was wrong as data: the catalogue writes its sentence. */
export type Answer<Value, Fault> = { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly fault: Fault };

export const answered = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({ ok: true, value });
export const cannot = <Fault>(fault: Fault): { readonly ok: false; readonly fault: Fault } => ({ ok: false, fault });
