export const pass = 'PASS';
export const fail = 'FAIL';
export const cannotTell = 'CANNOT TELL';
export const limitFromMemory = '; limit from memory';
