// What is asked about a press of the switch that may have been meant for the camera's button. Short: a hold is under way.
import type { Asked } from '../sweep/inputs.ts';
import type { InWords } from './outcomes.ts';

const both = (text: string): InWords => ({ spoken: text, written: text });

const ABOUT: Record<Asked['about'], InWords> = {
  short: both('Did it flicker already? Press again if it did. If not, keep holding.'),
  double: both('Did it come late already? Press twice again if it did. If not, keep holding.'),
  long: both('Is it dark already? Press long again if it is. If not, keep holding.'),
  kept: both('Tap to begin, then keep only the camera\u2019s button pressed.'),
};

const KEPT_UNDOABLE = both('Tap to begin, then keep only the camera\u2019s button pressed. Press twice to undo.');

/** `undoable`: there is something to take back from before this hold. */
export const askedInWords = ({ about }: Asked, undoable: boolean): InWords => (about === 'kept' && undoable ? KEPT_UNDOABLE : ABOUT[about]);
