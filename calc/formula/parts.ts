import type { LinePart } from './slice.ts';

/** Parts that make the meat block: raw muscle, fat and offal, nothing else. */
const MEAT_PARTS: readonly LinePart[] = ['lean', 'fat', 'liver', 'offal'];

/** Parts that may hold anything, a bird or a fish too. An egg is no bird; salt and dry seasoning are none either. */
const OPEN_PARTS: readonly LinePart[] = [...MEAT_PARTS, 'panade', 'liquid', 'garnish', 'lining'];

/** Whether a part belongs to the meat block, on which the US weight basis of nitrite rests. */
export function isMeat(part: LinePart): boolean {
  return MEAT_PARTS.includes(part);
}

/** Whether a part goes into the bowl. A lining goes round the mix and counts in neither total nor meat block. */
export function isInBowl(part: LinePart): boolean {
  return part !== 'lining';
}

/** Whether a line of this part without a known ingredient might be meat of a bird, or fish. */
export function mayBeAnything(part: LinePart): boolean {
  return OPEN_PARTS.includes(part);
}
