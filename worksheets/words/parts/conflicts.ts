export const twoValues = 'Two values';
export const twoTabsHaveChangedSameField =
  'Two tabs have changed the same field. Both values are kept in the history: say which is right.';
export const onScreen = (ours: string) => `On screen: ${ours}`;
export const theOther = (theirs: string) => `The other: ${theirs}`;
