// The keyboard shortcut that opens the panel. It is the browser's to change: its own page is opened, or said where it is.
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';

export function Shortcut() {
  const { openShortcuts } = useSession().installed;
  const say = words('settings').shortcut;
  return (
    <>
      <h3>{say.title}</h3>
      {openShortcuts ? (
        <button type="button" onClick={openShortcuts}>
          {say.change}
        </button>
      ) : (
        <p class="muted small">{say.where}</p>
      )}
    </>
  );
}
