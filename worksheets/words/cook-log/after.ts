export const derived = ', derived';
export const dMinAtC = (dRefMin: string, refC: string, z: string) => `D ${dRefMin} min at ${refC} °C, ${z}`;
export const logReductionsCannotTellNo =
  'Log reductions: cannot tell. No published heat resistance fits what the formula names.';
export const logReductionsComeUpCounted =
  'Log reductions, come-up counted. Information: no rule here judges by a sum.';
export const organismAndWhereItWasMeasured = 'Organism, and where it was measured';
export const toTheEndOfHeating = 'To the end of heating';
export const withCarryOver = 'With carry-over';
export const toC = (one: string, measuredC: number, measuredC2: number, paper: string) =>
  `${one}; ${measuredC} to ${measuredC2} °C. ${paper}`;
export const pasteurisationValuesMinTref = 'Pasteurisation values, min at Tref. Information.';
export const reference = 'Reference';
export const askedForElsewhere = 'Asked for elsewhere';
export const noMore = 'no more';
