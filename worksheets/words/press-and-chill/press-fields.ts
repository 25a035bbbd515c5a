export const boardLength = 'Board, length';
export const boardBearsProductCut23 = 'The board that bears on the product, cut 2 to 3 mm smaller all round.';
export const boardWidth = 'Board, width';
export const loadOnOneBoard = 'Load on one board';
export const everythingLiesBoardToo = 'Everything that lies on it, the board too.';
export const pressureWanted = 'Pressure wanted';
export const thenTheLoadForItIs = 'Then the load for it is worked out.';
export const pressOnAt = 'Press on at';
