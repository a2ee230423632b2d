// Which prompts are cut short for a person who has heard them many times. What was told by voice is still read back, as it
// may have been misheard, and a trouble is news to everybody; a key or a press has its tone.
import type { Prompt } from '../sweep/effect.ts';

export type BriefPrompt = Extract<Prompt, { say: 'did it hold' | 'next' }>;

export function isBrief(prompt: Prompt): prompt is BriefPrompt {
  if (prompt.say === 'did it hold') return true;
  return prompt.say === 'next' && !prompt.trouble && prompt.noted?.by !== 'voice';
}
