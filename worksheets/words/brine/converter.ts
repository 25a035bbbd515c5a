export const measuredIn = 'Measured in';
export const reading = 'Reading';
export const brineSaltWater60F15 = 'Of a brine of salt and water at 60 °F (15.6 °C).';
export const theSameBrineInEveryScale = 'The same brine in every scale';
export const writeReadingSeeEveryScale = 'Write a reading to see it in every scale';
