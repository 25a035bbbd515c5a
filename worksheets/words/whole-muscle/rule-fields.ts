export const whoseRuleOnNitrite = 'Whose rule on nitrite';
export const notChosenNoLimitCanBe = 'Not chosen: no limit can be judged';
export const oneAuthorityEnforcesRulesNever = 'The one your authority enforces. Rules are never blended.';
export const whatItIs = 'What it is';
export const notChosen = 'Not chosen';
export const baconHasLimitsOfItsOwn = 'Bacon has limits of its own.';
export const howItIsEaten = 'How it is eaten';
export const traditionalCureRuleListsName = 'A traditional cure that the rule lists by name';
export const no = 'No';
export const yes = 'Yes';
export const onlyNameLawItselfDoubtNo = 'Only for a name in the law itself. In doubt: no.';
export const smallestStepOfTheScale = 'Smallest step of the scale';
export const whatLastDigitMoves01 = 'What the last digit moves by: 0.1 or 1, say.';
export const sodiumNitriteInItByThe = 'Sodium nitrite in it, by the pack';
export const readOffVeryPackTwoCuring =
  'Read it off this very pack. Two curing salts of the same colour can differ tenfold.';
export const nitrateInItByThePack = 'Nitrate in it, by the pack';
export const type0WhenPackListsNone = 'Type 0 when the pack lists none. Blank is unknown.';
