export const reckonGrowthInStorage = 'Reckon growth in storage';
export const kindOfFoodForListeria = 'Kind of food, for Listeria';
export const notChosenNothingIsReckoned = 'Not chosen: nothing is reckoned';
export const keptAt = 'Kept at';
export const forWord = 'For';
export const addAnotherStay = 'Add another stay';
export const listeriaMonocytogenesTenfolds = 'Listeria monocytogenes, tenfolds, without lag';
export const stay2 = (place: number) => `Stay ${place}`;
export const removeStay2 = (place: number) => `Remove stay ${place}`;
export const cannotTell2 = (listeriaDoubtWords: string) => `Cannot tell: ${listeriaDoubtWords}`;
export const warmestHundredfoldTakesDaysLag2 = (daysToHundredfold: string) =>
  `At the warmest of them a hundredfold takes ${daysToHundredfold} days. With lag: cannot tell, none is published with this rate.`;
export const clostridiumPerfringensTenfolds2 = 'Clostridium perfringens, tenfolds';
