// A person at the bench and on its set-up walk, in either browser.
import { choose, look, tabTo, type, until, untilText, type Seat } from './seat.ts';

export const stepNow = async (seat: Seat): Promise<number> => Number(/Step (\d+) of/.exec((await look(seat)).text)?.[1] ?? 0);
export const untilStep = (seat: Seat, step: number) => untilText(seat, `Step ${step} of`);
export const stepsInAll = async (seat: Seat): Promise<number> => Number(/Step \d+ of (\d+)/.exec((await look(seat)).text)?.[1] ?? 0);

/** A kit typed in, and its bench reckoned. */
export async function untilBench(seat: Seat): Promise<void> {
  await until(seat, 'the start', ({ screen, text }) => screen === 'start' && text.includes('New sweep'));
  for (const [field, text] of [['Body', 'Velde M1'], ['Lens', 'Orrin 85 f/1.8'], ['Focal length, mm', '85']] as const) {
    await tabTo(seat, field);
    await type(seat, text);
  }
  await choose(seat, 'Set up the bench');
  await untilText(seat, '50 focal lengths');
  await tabTo(seat, 'Widest aperture');
  await type(seat, '1.8');
  await untilText(seat, 'Depth of field');
}
