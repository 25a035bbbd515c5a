export const halfWayOut = 'half way out';
export const atTheWall = 'at the wall';
