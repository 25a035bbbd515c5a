export const salt = 'Salt';
export const everythingInTheBowlAbout = 'Everything in the bowl, about';
export const largestPartPutGramsOthers = 'The largest part is put in grams, the others follow as shares.';
export const beginWithItsUsualShares = 'Begin with its usual shares';
export const linesBegunAmountsDefaults = (done: number) =>
  `${done} lines are begun. Their amounts are defaults inside the usual ranges: say what each line is, and change what you like. A curing salt is for you to add, by its pack.`;
