// Opens the panel from the toolbar button and from the shortcut. It keeps no state, so the browser may stop it at any time.
import { onToolbarButton, sidebar, sidePanel } from '../platform/toolbar.ts';

if (sidePanel) {
  void sidePanel.setPanelBehavior({ openPanelOnActionClick: true });
} else {
  // Firefox counts the click as the person's wish only until the first await: toggle at once.
  onToolbarButton(() => void sidebar?.toggle());
}
