export const moveUp = (label: string) => `Move up: ${label}`;
export const moveDown = (label: string) => `Move down: ${label}`;
export const remove = (label: string) => `Remove: ${label}`;
export const takenOut = 'Taken out:';
export const putItBack = (label: string) => `Put it back: ${label}`;
export const putItBack2 = 'Put it back';
