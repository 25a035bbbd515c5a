export const whereTheCheckIsMade = 'Where the check is made';
export const kitchen = 'Kitchen';
export const height = 'Height';
export const pressureHere = 'Pressure here';
export const waterBoilsAt = 'Water boils at';
export const mayBeOff = 'May be off, ±';
export const aCheckIsGoodFor = 'A check is good for';
export const days = 'days';
export const limit = 'Limit';
export const eachThermometer = 'Each thermometer';
export const name = 'Name';
export const inIce = 'In ice';
export const inBoil = 'In boil';
export const step = 'Step';
export const error = 'Error ±';
export const offAtTheLimit = 'Off at the limit';
export const mustShow = 'MUST SHOW';
export const dayBy = 'Day, by';
export const due = 'Due';
export const mustShowLimitPlusWhatShows =
  'Must show: limit, plus what it shows too much there, plus its error, rounded up to a step of the display.';
export const thermometerFailsTakenOutUse =
  'A thermometer that fails is taken out of use, never used with a correction in the head. What was cooked since its last good check is on hold.';
export const thermometerCheck = 'Thermometer check';
export const toleranceTermCommonPracticeNo = 'Tolerance and term: common practice, no source; no rule set';
