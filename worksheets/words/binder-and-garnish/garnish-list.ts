export const no = 'No';
export const yes = 'Yes';
export const garnish = (place: number) => `Garnish ${place}`;
export const whatGarnishIs = (place: number) => `What garnish ${place} is`;
export const asBought = (name: string) => `${name}, as bought`;
export const leftAfterPreparing = (name: string) => `Left after preparing, ${name}`;
export const peeledBonedCookedDriedOver100 =
  'Peeled, boned, cooked, dried. Over 100 % for what soaks up water.';
export const readyToFoldInWeighed = (name: string) => `${name}, ready to fold in, weighed`;
export const outranksTheReckoning = 'Outranks the reckoning.';
export const shape = (name: string) => `Shape, ${name}`;
export const sizeOfAPiece = (name: string) => `Size of a piece, ${name}`;
export const edgeDiameterThicknessStrip = 'Edge, diameter, or thickness of a strip.';
export const pressedOrBakedDry = (name: string) => `Pressed or baked dry, ${name}`;
export const rawOnionShallotGarlicOrLeek = (name: string) => `Raw onion, shallot, garlic or leek, ${name}`;
export const laidStripsDensityFiguresOff = 'Laid in strips, density, figures off the pack';
export const stripsLaidAlong = (name: string) => `Strips laid along, ${name}`;
export const seenInEverySliceBlankScattered = 'Seen in every slice. Blank: scattered.';
export const densityOf = (name: string) => `Density of ${name}`;
export const intoTheBowl = (name: string) => `${name} into the bowl`;
export const cannotTellWeighGiveWhatBought = 'Cannot tell: weigh it, or give what is bought and what is left';
export const derived = (prepared: string) => `${prepared} Derived.`;
export const ofTheWholeMix = (shareFraction: string) => `${shareFraction} of the whole mix.`;
export const toBuy = (toBuyG: string) => `To buy: ${toBuyG}.`;
export const piecesInASliceOnAverage = (name: string) => `${name}: pieces in a slice, on average`;
export const cannotTellPieceSliceMould =
  'Cannot tell: piece, slice, mould, density or the formula is missing';
export const derived2 = (pieces: string) => `${pieces} Derived.`;
export const seenOnOneFace = (onFace: string, onFace2: string) => `Seen on one face: ${onFace}. ${onFace2}`;
