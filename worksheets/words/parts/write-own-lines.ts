export const putTheOldLinesBack = 'Put the old lines back';
