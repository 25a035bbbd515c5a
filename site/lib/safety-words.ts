import type { SAFETY } from '../../content/schemas.ts';

/** What a defect's safety letter means, in words. */
export const SAFETY_WORDS: Readonly<Record<(typeof SAFETY)[number], { word: string; meaning: string }>> = {
  N: { word: 'Quality only', meaning: 'It eats badly. It is not a sign of danger by itself.' },
  C: { word: 'Check the log', meaning: 'It may come from a safety failure. Read the log before you serve.' },
  S: { word: 'Safety: hold', meaning: 'Hold the batch and follow the food-safety plan. Do not taste.' },
};
