export const notPressed = 'Not pressed';
export const inARatedBox = ', in a rated box';
export const toKpa = (lowKPa: number, highKPa: number, value: string) =>
  `${lowKPa} to ${highKPa} kPa${value}`;
export const putOnWhenTheCoreIs = (coreC: number, coreC2: number) =>
  `Put on when the core is at ${coreC} to ${coreC2} °C. `;
export const to = (hours: number, hours2: number) => `${hours} to ${hours2}`;
export const forH = (hours: string | number) => `For ${hours} h. `;
export const doNotHoldUpChillCommon = (core: string, time: string) =>
  `${core}${time}Do not hold up the chill for it. Common practice, no source.`;
export const thisLoadPressesWith = 'This load presses with';
export const writeTheBoardAndTheLoad = 'Write the board and the load';
export const kg980665CmKpa = (loadKg: string, boardAreaMm2: string, pressureKPa: string) =>
  ` = ${loadKg} kg × 9.80665 ÷ ${boardAreaMm2} cm² = ${pressureKPa} kPa`;
export const load980665MSArea = (loadKg: string) => `Load × 9.80665 m/s² ÷ area of the board${loadKg}.`;
export const loadForThePressureWanted = 'Load for the pressure wanted';
export const writeTheBoardAndThePressure = 'Write the board and the pressure';
export const pressureWantedAreaBoard980665 = 'Pressure wanted × area of the board ÷ 9.80665 m/s². Derived.';
export const usualForThisProduct = 'Usual for this product';
export const nothingUsualProductFamily = 'Nothing is usual for this product family';
export const chooseProductFamilyBatch = 'Choose the product family on the batch formula';
export const habitTrainedKitchensFamily =
  'A habit of trained kitchens for this family. Common practice, no source.';
