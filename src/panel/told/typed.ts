// What stands in a few fields by now. Kept beside the drawing, so that Enter right after a letter takes that letter too.
import { signal, type ReadonlySignal } from '@preact/signals';

export interface TypedFields {
  readonly texts: ReadonlySignal<readonly string[]>;
  /** One sentence about what does not fit; empty where all does. */
  readonly fault: ReadonlySignal<string>;
  type(at: number, text: string): void;
  refuse(sentence: string): void;
  /** True until what stands there was taken. */
  isOpen(): boolean;
  took(): void;
}

export function newTyped(first: readonly string[]): TypedFields {
  const texts = signal(first);
  const fault = signal('');
  let taken = first;
  return {
    texts,
    fault,
    type(at, text) {
      texts.value = texts.value.map((old, index) => (index === at ? text : old));
      fault.value = '';
    },
    refuse: (sentence) => void (fault.value = sentence),
    isOpen: () => texts.peek().some((text, at) => text !== taken[at]),
    took: () => void (taken = texts.peek()),
  };
}
