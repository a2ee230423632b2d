// Which lens, and weighed how, as it stands in the address of the page to print.
import type { Weighing } from '../../logbook/entering/oneValue.ts';

/** A page that is asked for: a situation of the lens, and how its situations are weighed. */
export interface AskedPage {
  readonly situation: string;
  readonly weighing: Weighing;
}

export function writeAsked({ situation, weighing }: AskedPage): string {
  const written = new URLSearchParams({ of: situation });
  if (weighing.by === 'use') {
    written.set('by', 'use');
    for (const [id, use] of weighing.use) written.append('use', `${use} ${id}`);
  }
  return written.toString();
}

/** What does not read as a weight is left out and counts as 1, as one that was never typed. */
export function readAsked(hash: string): AskedPage {
  const read = new URLSearchParams(hash.replace(/^#/, ''));
  const situation = read.get('of') ?? '';
  if (read.get('by') !== 'use') return { situation, weighing: { by: 'worst share' } };
  const use = new Map<string, number>();
  for (const one of read.getAll('use')) {
    const [, weight, id] = /^(\d+(?:\.\d+)?) (.+)$/.exec(one) ?? [];
    if (id !== undefined) use.set(id, Number(weight));
  }
  return { situation, weighing: { by: 'use', use } };
}
