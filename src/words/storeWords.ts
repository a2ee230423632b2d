// What went wrong with what lies on this computer: everything that is stored, and the words that were taught.

/** `why`: what the browser says of it; null where it has not answered in time. */
interface StoreFault {
  readonly is: 'not read' | 'not written';
  readonly why: string | null;
}

export interface StoreWords {
  readonly fault: (fault: StoreFault) => string;
  readonly tryNow: string;
  readonly taught: Readonly<Record<'not read' | 'not kept' | 'not erased', string>>;
}
