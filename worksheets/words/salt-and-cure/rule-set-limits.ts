export const atMost = 'at most';
export const fromForAName = 'from (for a name)';
export const fromPolicy = 'from (policy)';
export const leftInTheProduct = 'left in the product';
export const putIn = 'put in';
export const sterilisedInItsPack = (kind: string) => `${kind}, sterilised in its pack`;
export const comparedWithTheTextOn = (title: string, edition: string, reviewed: string) =>
  `${title}; ${edition}. Compared with the text on ${reviewed}.`;
export const checkOverdueReadTheCurrentText = 'Check overdue: read the current text.';
export const figuresMemoryCheckCurrentText = 'Figures from memory: check the current text.';
export const theLimitsOfThisRule = 'The limits of this rule';
export const limit = 'Limit';
export const counted = 'Counted';
export const on = 'On';
export const when = 'When';
export const fromMemory = (limit: string) => `${limit} (from memory)`;
