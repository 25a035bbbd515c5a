export const theRawMeatWithoutSkin = 'the raw meat without skin';
export const theProductAsMade = 'the product as made';
export const theFinishedProduct = 'the finished product';
export const atMost = 'at most';
export const fromForAName = 'from (for a name)';
export const fromPolicy = 'from (policy)';
export const comparedWithTheTextOn = (title: string, edition: string, reviewed: string) =>
  `${title}; ${edition}. Compared with the text on ${reviewed}.`;
export const checkOverdueReadTheCurrentText = 'Check overdue: read the current text.';
export const figuresMemoryCheckCurrentText = 'Figures from memory: check the current text.';
export const theLimitsOfThisRuleFor = 'The limits of this rule for it';
export const sayWhatItIsFirstLimits = 'Say what it is first: limits differ.';
export const noneCarriedHereDoesNotMean =
  'None is carried here for it. That does not mean there is none: ask your authority.';
export const limit = 'Limit';
export const counted = 'Counted';
export const on = 'On';
export const when = 'When';
export const leftInTheProduct = 'left in the product';
export const putIn = 'put in';
export const fromMemory = ' (from memory)';
