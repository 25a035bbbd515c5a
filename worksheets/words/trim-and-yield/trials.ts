export const trial = (place: number) => `Trial ${place}`;
export const asBought = 'As bought';
export const pile = (index: number) => `Pile ${index}`;
export const date = 'Date';
export const trimmedBy = 'Trimmed by';
export const addATrial = 'Add a trial';
