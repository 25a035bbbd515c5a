export const whatAndByWhichPlan = 'What, and by which plan';
export const fermentationDegreeHoursToPh5 = 'Fermentation: degree-hours to pH 5.3';
export const weightLost = 'Weight lost';
export const saltAndWaterEstimated = 'Salt and water, estimated';
export const measuredByALaboratory = 'Measured by a laboratory';
export const dryingRoomAgainstTrichinella = 'Drying room against Trichinella';
export const oneUnitedStatesWaysPorkCasing =
  'One of the United States’ ways for pork, by casing, warm hold and salt. It does not treat wild species.';
export const whatCanBeJudged = 'What can be judged';
export const cannotTellNothingOnTheBench = 'CANNOT TELL: nothing on the bench yet';
export const cardLotPlanChamberWeights =
  'A card for the lot: the plan, the chamber, the weights, the laboratory.';
