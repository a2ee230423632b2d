// A window in which a sweep has begun, on a body with a short scale: the search over it takes little time.
import type { Beginning, SettingsPatch } from '../../../src/panel/session/session.ts';
import { Computer, settle, type Window } from './world.ts';

export function addKit({ session }: Window): Beginning {
  const body = session.saveBody({ name: 'Velde M1', scale: { min: -8, max: 8, step: 1 }, arrows: 'absent' });
  const lens = session.saveLens({ name: 'Orrin 85 f/1.8' });
  if (!body.ok || !lens.ok) throw new Error('the kit was refused');
  const situation = session.saveSituation({ body: body.value, lens: lens.value, converter: null, focalLength: 85, distance: 4250 });
  if (!situation.ok) throw new Error('the situation was refused');
  return { with: 'kit', situation: situation.value };
}

/** Opens a window, adds kit, begins a sweep, and forgets what was logged so far. */
export async function sweeping(settings: SettingsPatch = {}): Promise<{ computer: Computer; window: Window }> {
  const computer = new Computer();
  const window = await computer.open();
  window.session.changeSettings(settings);
  const begun = await window.session.begin(addKit(window));
  if (!begun.ok) throw new Error(begun.fault);
  await settle();
  computer.log.length = 0;
  return { computer, window };
}

export const phaseOf = ({ session }: Window): string | undefined => session.sweep.value?.phase.name;
