import { plural } from '../../plural.ts';

export const mould = 'mould';
export const checkPack = ' (check pack)';
export const nitriteNotForUnder3s = ' Nitrite: not for under-3s.';
export const liverVitaminA = ' Liver: vitamin A.';
export const noneOfTheListedOnesFound = 'none of the listed ones found';
export const checkOverdue = ', CHECK OVERDUE';
export const euUk2 = (named: string) => `EU/UK: ${named}`;
export const us2 = (named: string) => `US: ${named}`;
export const unknownForLineS2 = (unknown: number) =>
  `UNKNOWN for ${unknown} line${plural(unknown, { one: '', other: 's' })}`;
export const notPregnancyOver65sBabiesWeak2 = (liver: string, nitrite: string) =>
  `Not for pregnancy, over-65s, babies, weak immunity (Listeria).${liver}${nitrite}`;
export const checked2 = (
  subject: string,
  jurisdiction: string,
  title: string,
  edition: string,
  reviewed: string,
  value: string,
  notConfirmed: string,
) => `${subject}: ${jurisdiction}, ${title}, ${edition}; checked ${reviewed}${value}${notConfirmed}`;
