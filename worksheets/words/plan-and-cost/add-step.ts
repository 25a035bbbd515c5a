export const servedOn = 'Served on';
export const dayTimeStepsCountedBackHere = 'Day and time. The steps are counted back from here.';
export const stepToAdd = 'Step to add';
export const addTheStep = 'Add the step';
export const putInTheStepsOfA = 'Put in the steps of a cooked terrine';
