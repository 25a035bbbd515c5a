export const onThisWorksheet = 'On this worksheet';
