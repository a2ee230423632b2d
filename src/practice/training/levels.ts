// Which levels of the training there are, counted from 1: all that reading a stored round needs of the ladder.

export const LAST_LEVEL = 8;
/** The level of the practice camera's shortest delay and gap: a light this plain ought not to be missed. */
export const PLAIN_LEVEL = 4;
