export const cannotTellSayWhatIsDried = 'CANNOT TELL: say what is dried';
