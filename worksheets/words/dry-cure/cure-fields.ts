export const wayOfTheCure = 'Way of the cure';
export const onlyWeighedCureClosedBagCan = 'Only a weighed cure in a closed bag can be dosed and counted.';
export const saltWantedOfTheMeat = 'Salt wanted, of the meat';
export const allSourcesCuringSaltAmong = 'From all sources, the curing salt among them.';
export const sugarWantedOfTheMeat = 'Sugar wanted, of the meat';
export const nitriteWantedAsSodiumNitrite = 'Nitrite wanted, as sodium nitrite';
export const weightMeatWithoutSkinType0 =
  'On the weight of the meat without skin. Type 0 when none is wanted.';
export const coldOfTheRoom = 'Cold of the room';
export const warmestGetsOwnThermometer = 'The warmest it gets, by its own thermometer.';
export const intoTheCureOn = 'Into the cure on';
export const weightToLoseInDrying = 'Weight to lose in drying';
export const weightWithoutSkinBlankNotDried = 'Of the weight without skin. Blank: it is not dried.';
