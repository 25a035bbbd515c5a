export const rawMeatFatLiverAndOffal = 'raw meat, fat, liver and offal';
export const everythingInTheBowl = 'everything in the bowl';
export const theFinishedProduct = 'the finished product';
export const asSodiumNitrite = 'as sodium nitrite';
export const asNitriteIon = 'as nitrite ion';
export const nitriteAndNitrateSaltsTogether = 'nitrite and nitrate salts together';
export const nitriteNitrateTogetherSodium = 'nitrite and nitrate together, as sodium nitrite';
export const sodiumAscorbateOrErythorbate = 'sodium ascorbate or erythorbate';
