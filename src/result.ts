// How something can end that may fail: an error is a value, with one sentence for the person that says what to do.
export type Failed = { readonly ok: false; readonly sentence: string };
export type Result = { readonly ok: true } | Failed;
export type Got<T> = { readonly ok: true; readonly value: T } | Failed;

export const DONE: Result = { ok: true };
export const got = <T>(value: T): Got<T> => ({ ok: true, value });
export const failed = (sentence: string): Failed => ({ ok: false, sentence });

/** A value, or what was wrong as data: the catalogue writes its sentence. */
export type Answer<Value, Fault> = { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly fault: Fault };

export const answered = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({ ok: true, value });
export const cannot = <Fault>(fault: Fault): { readonly ok: false; readonly fault: Fault } => ({ ok: false, fault });
