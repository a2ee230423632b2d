// Work that takes long on a large logbook, step by step: whoever does it may stop between two steps, so that the screen goes on
// being drawn and says how far it is. Done at once it is the same work.

export interface HowFar {
  readonly done: number;
  readonly of: number;
}

export type Stepwise<Value> = Generator<HowFar, Value, void>;

export function atOnce<Value>(work: Stepwise<Value>): Value {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}
