export const someKitchensDrawnNeverGetThere = 'some kitchens drawn never get there';
export const inNearlyAll = (past: string) => `in nearly all: ${past}`;
export const atTheSoonest = (from: string, past: string) => `${from} at the soonest; ${past}`;
export const to = (from: string, high: string) => `${from} to ${high}`;
export const someKitchensDrawnFarPastLimit = 'some kitchens drawn are far past the limit';
