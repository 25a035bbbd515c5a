export const ovenRecordWhatEarlierCook = 'Oven record: what an earlier cook taught about this oven';
export const ovenRecord = 'Oven record';
export const noneTheShippedFigures = 'None: the shipped figures';
export const finishedCookLogPlanCanLeave = 'A finished cook log with a plan can leave one.';
export const airAndWaterGiveTheirHeat = 'Air and water give their heat, times';
export const theOvenHeatsThePanTimes = 'The oven heats the pan, times';
export const hotterThanItShowsBy = 'Hotter than it shows by';
