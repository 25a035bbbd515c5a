export const notMadeForThisThickness = ' (not made for this thickness)';
export const days = (curingTimeNames: string, days: string, value: string) =>
  `${curingTimeNames}: ${days} days${value}`;
export const saltDiffusing90MiddleDays = (fast: string, slow: string) =>
  `Salt diffusing to 90 % in the middle: ${fast} to ${slow} days`;
