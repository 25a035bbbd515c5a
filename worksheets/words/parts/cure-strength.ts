export const sodiumNitriteInItByThe = 'Sodium nitrite in it, by the pack';
export const readOffVeryPackTwoCuring =
  'Read it off this very pack. Two curing salts of the same colour can differ tenfold.';
export const nitrateInItByThePack = 'Nitrate in it, by the pack';
export const type0WhenPackListsNone = 'Type 0 when the pack lists none. Blank is unknown.';
