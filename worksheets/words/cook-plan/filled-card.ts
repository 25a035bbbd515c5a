export const cookPlan = 'Cook plan';
export const theCurveIsNotComputed = 'The curve is not computed.';
