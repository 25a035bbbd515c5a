export const nitriteAsSodiumNitrite = 'Nitrite, as sodium nitrite';
export const nitriteAsNitriteIon = 'Nitrite, as nitrite ion';
export const nitriteNitrateTogetherSodium = 'Nitrite and nitrate together, as sodium nitrite';
export const writeDownLaboratorysFigure = 'Write down a laboratory’s figure of nitrite left';
export const nitriteLeftByALaboratory = 'Nitrite left, by a laboratory';
export const foundInTheProduct = 'Found in the product';
export const mgKgReportPrintsBlankLimit =
  'mg/kg, as the report prints it. Blank: the limit on what is left cannot be told.';
export const whatTheFigureCounts = 'What the figure counts';
export const notChosenReadItOffThe = 'Not chosen: read it off the report';
export const sameNitriteThirdLessIonDo = 'The same nitrite is a third less as ion. Do not guess.';
export const laboratoryDateNumberReport = 'Laboratory, date, number of the report';
