export const pastryCrust = 'Pastry crust';
export const sheetsPasteCommonPracticeNo = 'Sheets and paste: common practice, no source; no rule set';
