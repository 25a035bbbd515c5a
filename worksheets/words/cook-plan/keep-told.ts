export const keepForSheet = 'Keep these times for the batch sheet';
export const keepAnew = 'Keep the times of the plan as it is now';
export const willPrint = 'The sheet prints them beside the log, as they stood, called no proof.';
export const keptAt = (date: string, clock: string) => `Kept for the sheet: as told ${date} ${clock}.`;
export const changed = 'THE PLAN HAS CHANGED SINCE: the sheet says so.';
export const bandFirst = 'Once the band is drawn, the times can be kept for the batch sheet.';
