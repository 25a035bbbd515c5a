export const addAMould = 'Add a mould';
export const emptyIMeasureItMyself = 'Empty: I measure it myself';
export const usualInsideMeasuresStart =
  'Usual inside measures to start from. Measure your own, and fill it once with water.';
export const addTheMould = 'Add the mould';
