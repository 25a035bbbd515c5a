export const noDecisionYet = 'no decision yet';
export const decision = (decisionWord: string) => `Decision: ${decisionWord}`;
export const cause = (cause: string) => `Cause: ${cause}`;
export const prevention = (prevention: string) => `Prevention: ${prevention}`;
export const release = 'release';
export const reheat = 'reheat';
export const discard = 'discard';
export const hold = 'hold';
