// The groups of words to teach in four rooms, by what a person wants to do by voice: a sweep, the walk, the logbook, the rest.
import type { GroupName } from '../../voice/wordGroups.ts';
import type { TaughtGroup } from './groups.ts';

export type RoomName = 'sweep' | 'walk' | 'logbook' | 'rest';

export interface RoomOfWords {
  readonly is: RoomName;
  readonly groups: readonly TaughtGroup[];
}

const ROOM: Readonly<Record<GroupName | 'lenses', RoomName>> = {
  sweep: 'sweep',
  walk: 'walk',
  values: 'logbook',
  lenses: 'logbook',
  arrows: 'rest',
  rest: 'rest',
};
const ROOMS: readonly RoomName[] = ['sweep', 'walk', 'logbook', 'rest'];

export const roomsOf = (groups: readonly TaughtGroup[]): readonly RoomOfWords[] =>
  ROOMS.map((is) => ({ is, groups: groups.filter((group) => ROOM[group.is] === is) })).filter(({ groups: those }) => those.length > 0);

export const wordsOf = ({ groups }: RoomOfWords): readonly string[] => groups.flatMap(({ words }) => words);

/** The room that stands open by itself: that of the word being taught, else the first in which a word is not taught; null where all are. */
export const openRoomOf = (rooms: readonly RoomOfWords[], taught: ReadonlySet<string>, teaching: string | null): RoomName | null =>
  rooms.find((room) => (teaching === null ? wordsOf(room).some((word) => !taught.has(word)) : wordsOf(room).includes(teaching)))?.is ?? null;
