// What a function gives, or that it threw: in a snapshot a change that makes it throw differs like any other.
export function orThrown<Value>(work: () => Value): Value | string {
  try {
    return work();
  } catch (error) {
    return `threw ${error instanceof Error ? error.name : 'something'}`;
  }
}
