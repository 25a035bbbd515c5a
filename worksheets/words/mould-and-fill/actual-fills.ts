export const asFilledNetWeight = 'As filled, net weight';
export const thisMould = 'This mould';
export const number = (index: number) => `Number ${index}`;
