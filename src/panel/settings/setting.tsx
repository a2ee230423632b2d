// The place of one setting on the screen, to which the search leads.
import type { ComponentChildren } from 'preact';
import type { SettingName } from './named.ts';

interface Props {
  readonly is: SettingName;
  readonly children: ComponentChildren;
}

const placeOf = (is: SettingName): string => `setting-${is.replaceAll(' ', '-')}`;

export const Setting = ({ is, children }: Props) => (
  <div id={placeOf(is)} class="stack">
    {children}
  </div>
);

/** Opens the room in which the setting stands, and gives the focus to its first control. */
export function leadTo(is: SettingName): void {
  const place = document.getElementById(placeOf(is));
  const room = place?.closest('details');
  if (!place || !room) return;
  room.open = true;
  const control = place.querySelector<HTMLElement>('input:checked') ?? place.querySelector<HTMLElement>('input, select, button');
  control?.focus();
  place.scrollIntoView({ block: 'center' });
}
