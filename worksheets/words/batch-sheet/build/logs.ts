export const cannotBe = 'cannot be';
export const log = 'Log';
export const andMoreInTheRecord = (named: string, length: number) =>
  `${named}; and ${length} more in the record`;
export const readTypedLater = (at: string, enteredLateMin: string) =>
  `read ${at}, typed ${enteredLateMin} later`;
export const enteredLate = (name: string, times: string) => `${name}, entered late: ${times}.`;
export const leftOutByAPerson = (name: string, each: string) => `${name}, left out by a person: ${each}.`;
export const out = 'out';
