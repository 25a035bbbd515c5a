export const cannotTellChooseWayBrine = 'CANNOT TELL: choose the way of the brine';
