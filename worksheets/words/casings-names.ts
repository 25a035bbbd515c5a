/** How a link is told. */
export const LINK_BY_NAMES: Readonly<Record<'mass' | 'length', string>> = {
  mass: 'By weight',
  length: 'By length',
};

/** What an input of the casings is called in the middle of a sentence, by its place in the batch. */
export const CASINGS_FIELD_NAMES: Readonly<Record<string, string>> = {
  'casings.batch': 'what is to be filled (or the formula)',
  'casings.stuffedDiameter': 'the width once stuffed',
  'casings.density': 'the density',
  'casings.fullness': 'how full it is',
  'casings.spare': 'the spare',
  'casings.linkMass': 'the weight of a link',
  'casings.linkLength': 'the length of a link',
};
