export const lastPrintedNothingReads = (issuedAt: string) =>
  `Last printed ${issuedAt}: nothing reads otherwise today.`;
export const lastPrintedRecomputedToday = (issuedAt: string) =>
  `Last printed ${issuedAt}. Recomputed today, it differs:`;
export const what = 'What';
export const asIssued = 'As issued';
export const today = 'Today';
