export const coreOfTheRulingLogTo = (starts: string, ends: string) =>
  `Core of the ruling log, ${starts} to ${ends}`;
export const limit = (label: string) => `limit ${label}`;
