export const labelCopy5030Mm = 'Label copy, 50 × 30 mm';
export const benchCopy = 'bench copy';
export const recordCopy = 'record copy';
export const weighUpCard = 'weigh-up card';
export const recordCopyNotes = 'record copy, notes';
export const benchAndRecord = 'bench and record';
