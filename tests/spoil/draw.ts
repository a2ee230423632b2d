// All places in an order that the seed draws, each as likely as any other to come first.
import { seededRandom } from '../../src/practice/random.ts';

export function drawn<T>(seed: number, items: readonly T[]): T[] {
  const random = seededRandom(seed);
  const order = [...items];
  for (let last = order.length - 1; last > 0; last -= 1) {
    const other = Math.floor(random() * (last + 1));
    [order[last], order[other]] = [order[other] as T, order[last] as T];
  }
  return order;
}
