export const theMeat = 'the meat';
export const whatPanadeLosesCookedWeight = 'what the panade loses, or its cooked weight';
export const theTemperatureOfThePanade = 'the temperature of the panade';
export const theEgg0ForNone = 'the egg (0 for none)';
export const theCream0ForNone = 'the cream (0 for none)';
export const theWeightOf = 'the weight of';
export const pieceSliceMouldOrFormulaFor = 'piece, slice, mould or formula for';
export const somethingUnnamed = 'something unnamed';
