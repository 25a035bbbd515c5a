export const warmsItBy = (name: string) => `Warms it by, ${name}`;
export const whatPassWarmsMeatNotFrozen =
  'What a pass warms meat that is not frozen. Grinding 2 to 4 °C (4 to 7 °F), chopping 10 °C (18 °F) or so: common practice, no source. Measure your own machine.';
export const anotherPass = 'Another pass';
export const addThePass = 'Add the pass';
