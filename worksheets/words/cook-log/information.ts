export const atLeast = 'at least ';
export const over6H = (time: string) => `${time}: over 6 h`;
export const within6H = (time: string) => `${time} (within 6 h)`;
export const noProbeYet = 'No probe yet.';
export const holdCountsReadingReachesComeUp =
  'A hold counts from the reading that reaches it: come-up is not in it. Carry-over counts while it is logged at or above the limit. The sums above count both, and judge nothing.';
export const lossInTheCookEstimate = 'Loss in the cook, estimate';
export const to = (lowFraction: string, highFraction: string) => `${lowFraction} to ${highFraction}`;
export const cannotTell = 'Cannot tell';
export const cannotTell2 = (cookLossDoubtWords: string) => `Cannot tell: ${cookLossDoubtWords}`;
export const weighFinishedSheetThenPrints = 'Weigh it finished: the sheet then prints what it lost.';
export const countedOnReadings = 'Counted on readings';
export const cannotTellNoLimitOrNo = 'Cannot tell: no limit or no reading';
export const firstLastReadingLongest =
  'First to last reading of the longest unbroken run at or above the action temperature, no two more than 15 min apart. A lower reading, a doubtful one or a blank ends the run. The verdict rests on this alone.';
export const straightLinesBetweenReadings = 'By straight lines between readings (information)';
export const longestStretchAboveAction =
  'Longest stretch at or above the action temperature if the core went straight from reading to reading, gaps over 60 min left out. It may be longer than what was shown.';
export const highestReading = 'Highest reading';
export const noReadingYet = 'No reading yet';
export const highestReadingsCountDerived = 'The highest of the readings that count. Derived.';
export const worthMinutes70CWholeLog = 'Worth in minutes at 70 °C, whole log (information)';
export const sum10T70C7 = (exactMin: string, trapezoidMin: string, failSafeMin: string) =>
  `Sum of 10^((T − 70 °C) ÷ 7.5 °C) × time along straight lines, from 60 °C up: Tref 70 °C, z 7.5 °C, D at 70 °C not used. To the end of heating: ${exactMin}. By trapezoids: ${trapezoidMin}. With the lower of two readings: ${failSafeMin}.`;
export const tref70CZ10C = (z10Min: string) =>
  `With Tref 70 °C and z 10 °C, from all readings: ${z10Min}. A sum of heat does not judge a limit that names one temperature and one time.`;
export const comeUpTo544C = (fromC: number) => `Come-up, ${fromC} to 54.4 °C`;
export const notShownByTheReadings = 'Not shown by the readings';
export const lastReadingBelow10CFirst =
  'Last reading at or below 10 °C to the first at or above 54.4 °C (130 °F): the longest the readings allow. Over 6 h, Staphylococcus may have made a toxin that cooking leaves. FSIS cooking guideline, Appendix A.';
