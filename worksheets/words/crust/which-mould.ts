export const mouldsThoseBatchMeasureBare =
  'The moulds are those of the batch. Measure the bare mould inside, without a crust or a lining.';
export const mouldOfTheBatch = 'Mould of the batch';
export const notChosen = 'Not chosen';
export const mould = (place: number, shapeNames: string) => `Mould ${place}: ${shapeNames}`;
export const addAMouldToTheBatch = 'Add a mould to the batch';
export const shape = 'Shape';
export const howMany = 'How many';
