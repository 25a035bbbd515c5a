export const addWhatIsNotInThe = 'Add what is not in the formula';
