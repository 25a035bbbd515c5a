/**
 * Objects a record is made of, by their keys in order. A packed record names a shape by its place here, so the list may
 * only grow at its end: links that were handed on must open for years. A shape that is not listed is packed with its
 * keys written out, and is merely longer.
 */
const KEYS = [
  'schema id demo createdAt updatedAt zone product formula cure mould process press deviations signOffs notes issued lifecycle dispatches history plan yield blend slicing dryCure brine drying seasoning chillBudget binder gelee casings crust label storage cookPlan thermometers',
  'name batchNo kitchen portions madeBy finished useBy',
  'text unit origin',
  'familyId lines saltTarget',
  'id name part ingredientId amount basis actual lot declared cure carriedNitrite',
  'salt fat protein water',
  'nitrite nitrate',
  'ruleSetId nitriteTarget scaleReadability weighedBy checkedBy',
  'moulds density',
  'id name shape dimensions waterFill headspace liningKind liningThickness count actualFills',
  'length width depth baseLength baseWidth diameter',
  'cookRuleSetId cookLimitId coolRuleSetId steps logs',
  'id kind medium oven startedAt endedAt note',
  'id name mouldId probeName offset error readings',
  'id at temperature enteredAt initials excluded',
  'reason initials at',
  'boardLength boardWidth load pressureTarget startedAt',
  'id at what decision cause prevention by',
  'role name at',
  'issuedAt calcVersion ruleSets composition verdicts figures',
  'subject id edition reviewed',
  'waterG proteinG fatG saltG',
  'id state reason',
  'want portionMass finished cookLoss endLoss residue testPoach lines sundries labour labourRate overhead pricing grossProfit foodCost margin tax currency servingAt steps chillerCapacity bathCapacity',
  'lineId price priceBasis eachMass trimYield',
  'id kind name least most',
  'tests',
  'id name price priceBasis parts trials needed usualLow usualHigh',
  'id name role value',
  'id on by purchased parts',
  'materials total freeA freeB fatTarget bands',
  'id name part ingredientId declared price priceBasis stock minShare maxShare locked',
  'fat protein salt liver water-to-protein',
  'min max',
  'cutBy length thickness endTrim kerf slicesPerPortion packMass endLoss',
  'product finish isTraditional method pieces saltTarget sugar nitriteTarget pack chillTemp startedOn lossTarget',
  'id name skinOff skinOn thickness saltActual curingSaltActual sugarActual now',
  'name lot strength',
  'product finish isTraditional method skinOff skinOn heaviest thickness meatWater water saltTarget saltBase strength sugar nitriteTarget pack acceleratorForm acceleratorTarget phosphate injection retained pickUp federalMethod afterInjection afterBrine brineTemp days mixedOn startedOn use actual',
  'water salt curingSalt sugar accelerator phosphate',
  'kind approvedPlan start now lossTarget startSalt startMoisture startProtein moisture protein waterActivity ph degreeHourRule steps reachedPh53 trichina',
  'id temp hours',
  'casing holdTemp holdHours total dryIngredients salt',
  'batch blends loose scaleReadability diluteInSalt grindingLoss timesTasted',
  'id name items dose stockTimes groundOn',
  'id spiceId name form parts salt',
  'id spiceId name form dose salt',
  'lots passes fatHeat limit iceTemp liquidAllowance room layer cube freezer',
  'id name kind mass temp fat beforePassId',
  'id kind rise',
  'meat panadeKind panadeShare panadeParts panadeLoss panadeCooked panadeTemp egg eggIngredientId cream creamIngredientId extenders usNamedSausage garnish mouldWidth mouldHeight sliceThickness',
  'id name ingredientId amount salt water',
  'id name ingredientId amount salt water kind',
  'id name ingredientId asBought prepYield prepared salt water density shape pieceSize laidCount dried rawAllium',
  'liquid use gelling strength strengthBloom form bloom sheetGrade sheetMass rule naturalSet ph alcohol sugar rawFruit origin cavity pour core',
  'casingId batch stuffedDiameter density fullness spare linkBy linkMass linkLength strandLength hankLength actualLinks',
  'mouldId thickness lidThickness overlap density spare pasteId salt pieceWidth pieceOverlap pieceMass pieceSalt',
  'market name maker origin lines extras filled loss drainedFat alcohol serving netWeight pack hurdle storeAt dateKind life cookDayCounts cookedOn packedOn audience looksLikeCut',
  'id name madeOf allergens stressed collagen collagenCut figures',
  'saturates carbohydrate sugars fibre alcohol',
  'id name madeOf allergens mass figures',
  'saturates carbohydrate sugars fibre alcohol fat protein salt',
  'ruleSetId nitriteTarget scaleReadability weighedBy checkedBy residual',
  'found as report',
  'id name mouldId probeName offset error readings thermometerId',
  'id state at by second why',
  'id at to amount by',
  'at by what row from to sum',
  'materials total freeA freeB fatTarget standard bands',
  'nameId yield asBounds',
  'listeriaGroupId stays',
  'id temp time',
  'mouldId vessel wall lid water protein fat start method oven fan steam kettle bathWater bathStart cover panLength panWidth panHeight mouldsInPan level altitude target hold rest room press pressAir chill',
  'id kind temp minutes until standing top',
  'altitude pressure tolerance goodFor thermometers',
  'id name ice boil step error checkedOn checkedBy',
  'listeriaGroupId stays measured',
  'ph waterActivity',
  'cure cook cool',
  'mouldId vessel wall lid water protein fat start method oven fan steam kettle bathWater bathStart cover panLength panWidth panHeight mouldsInPan level altitude ovenRecord target hold rest room press pressAir chill told',
  'at calcVersion ofPlan targetC target heatEnd peak',
  'low middle high',
] as const;

export const SHAPES: readonly (readonly string[])[] = KEYS.map((keys) => keys.split(' '));

const sorted = (keys: readonly string[]) => keys.toSorted().join(' ');
const places = new Map(SHAPES.map((keys, place) => [sorted(keys), place] as const));

/** Place of the shape that has exactly these keys, or null. */
export function exactShape(keys: readonly string[]): number | null {
  return places.get(sorted(keys)) ?? null;
}

/** Place of the shape that shares most keys with these, or null when none shares any. */
export function nearestShape(keys: readonly string[]): number | null {
  let best = { place: -1, shared: 0 };
  for (const [place, shape] of SHAPES.entries()) {
    const shared = shape.filter((key) => keys.includes(key)).length;
    if (shared > best.shared) best = { place, shared };
  }
  return best.place < 0 ? null : best.place;
}
