export const chooseAMaterial = 'Choose a material';
export const material = (place: number) => `Material ${place}`;
export const weightMakeFixedMaterials = 'Weight to make, fixed materials included';
export const fatWantedOfTheBlend = 'Fat wanted, of the blend';
export const fatTestWouldFindLeanLooks =
  'Fat that a test would find. Lean that looks clean still holds some.';
export const firstFreeMaterial = 'First free material';
export const secondFreeMaterial = 'Second free material';
export const fat = 'Fat';
export const protein = 'Protein';
export const salt = 'Salt';
export const liver = 'Liver';
export const waterToProtein = 'Water to protein';
export const writeWhatBlendMustKeepBlank =
  'Write what the blend must keep to; a blank field binds nothing, the same figure twice is a target. The weight to make stands above.';
export const atLeast = (label: string) => `${label}, at least`;
export const atMost = (label: string) => `${label}, at most`;
