export const ifStandsLeaveBlankRollLies = 'If it stands. Leave blank for a roll that lies.';
export const ifRollLiesLeaveBlankIf = 'If it is a roll that lies. Leave blank if it stands.';
export const atTheRim = 'At the rim.';
export const acrossTheOpenSide = 'Across the open side.';
export const fromTheOpenSideDownTo = 'From the open side down to the edge.';
export const inside = (dimensionNames: string) => `${dimensionNames}, inside`;
