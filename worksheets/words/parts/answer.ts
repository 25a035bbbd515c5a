export const cannotTellAnInputIsMissing = 'Cannot tell: an input is missing';
