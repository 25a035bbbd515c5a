export const pass = 'PASS';
export const fail = 'FAIL';
export const cannotTell = 'CANNOT TELL';
export const limitMemoryCheckCurrentText = '· limit from memory, check the current text';
export const checkOverdueLastComparedText = (reviewed: string) =>
  `· check overdue, last compared with the text on ${reviewed}`;
export const commonPracticeNoSource = 'Common practice, no source';
