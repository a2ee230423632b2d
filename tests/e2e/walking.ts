// A person at the bench and on its set-up walk, in either browser.
import { choose, look, tabTo, type, untilText, type Seat } from './seat.ts';
import { nameKit } from './sweeping.ts';

export const stepNow = async (seat: Seat): Promise<number> => Number(/Step (\d+) of/.exec((await look(seat)).text)?.[1] ?? 0);
export const untilStep = (seat: Seat, step: number) => untilText(seat, `Step ${step} of`);
export const stepsInAll = async (seat: Seat): Promise<number> => Number(/Step \d+ of (\d+)/.exec((await look(seat)).text)?.[1] ?? 0);

export const NEW_LENS = 'New lens \u201cOrrin 85 f/1.8\u201d: Start';

/** A kit typed in, and its bench reckoned. */
export async function untilBench(seat: Seat): Promise<void> {
  await nameKit(seat, { body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: '85' });
  await choose(seat, 'More');
  await untilText(seat, 'Set up the bench');
  await choose(seat, 'Set up the bench');
  await untilText(seat, '50 focal lengths');
  await tabTo(seat, 'Widest aperture');
  await type(seat, '1.8');
  await untilText(seat, 'Depth of field');
}
