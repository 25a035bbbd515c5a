export const mould = (place: number) => `Mould ${place}`;
export const name = 'Name';
export const shape = 'Shape';
export const filledWithWaterToTheRim = 'Filled with water to the rim';
export const gramsWaterMillilitresOutranks =
  'Grams of water are millilitres. It outranks the measures. Blank: not measured.';
export const headspace = 'Headspace';
export const fromTheRimDownToThe = 'From the rim down to the mix.';
export const lining = 'Lining';
export const thicknessOfTheLining = 'Thickness of the lining';
export const howManyOfThisMould = 'How many of this mould';
