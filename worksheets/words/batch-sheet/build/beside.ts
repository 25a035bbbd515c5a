export const p70CZ75 = (wholeMin: string, wholeMin2: string) =>
  `P(70 °C, z 7.5) ${wholeMin} min, P(70 °C, z 10) ${wholeMin2} min, come-up and carry-over counted`;
export const comeUpNotShown = 'come-up not shown';
export const over6H = ', OVER 6 h';
export const comeUpTo544C = (fromC: number, taken: string, value: string) =>
  `come-up ${fromC} to 54.4 °C ${taken}${value}`;
export const inLog = (organism: string, food: string, whole: string, paper: string) =>
  `${organism} in ${food} ${whole} log (${paper})`;
export const informationProbeErrorTakenOff = (boolean: string) =>
  `Information, probe error taken off: ${boolean}.`;
export const informationCPerfringensCooling = 'Information, C. perfringens in the cooling';
export const cannotTell = (head: string, growthDoubtWords: string) =>
  `${head}: cannot tell, ${growthDoubtWords}`;
export const atMostTenfoldsWithoutLagWith = (growthFoodWords: string, most: string, most2: string) =>
  `${growthFoodWords} at most ${most} tenfolds without lag, ${most2} with`;
export const soFar = ', SO FAR';
export const modelsFromMemory = (head: string, value: string, sets: string) =>
  `${head}${value}, models from memory: ${sets}.`;
