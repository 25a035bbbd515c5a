export const cannotTellThereIsNoPiece = 'CANNOT TELL: there is no piece yet';
