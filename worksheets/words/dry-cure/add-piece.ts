export const addAPiece = 'Add a piece';
