// The printed card has a page of its own, because a side panel cannot print.
import { openPage } from '../../platform/tabs.ts';

export const openCard = (body: string): void => openPage(`card.html#${encodeURIComponent(body)}`);
