export const limit = 'Limit';
export const steps = 'Steps';
export const probes = 'Probes';
export const readings = 'Readings';
export const forecast = 'Forecast';
export const verdict = 'Verdict';
export const theLimit = 'The limit';
export const stepsInTheOrderOfThe = 'Steps, in the order of the work';
export const cookPlanEveryReadingForecasts =
  'With a cook plan, every reading forecasts the finish. The probe rules.';
export const cannotTellNothingOnTheBench = 'CANNOT TELL: nothing on the bench yet';
export const besideTheVerdict = 'Beside the verdict';
export const informationNoneTurnsFailInto = 'For information. None of it turns a fail into a pass.';
export const notYetComputedNoReadingNo = 'Not yet computed: no reading, no verdict';
