export const nothingYetAddWhatLiesChiller = 'Nothing yet. Add what lies in the chiller.';
