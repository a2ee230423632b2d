// What the person said of some pictures: which one was which. The rest follows from the order of the shots.
import { useState } from 'preact/hooks';

export interface ToldParts<Part> {
  readonly parts: ReadonlyMap<string, Part>;
  readonly tell: (id: string, part: Part) => void;
}

export function useToldParts<Part>(): ToldParts<Part> {
  const [parts, setParts] = useState<ReadonlyMap<string, Part>>(new Map());
  return { parts, tell: (id, part) => setParts((before) => new Map(before).set(id, part)) };
}
