/** Why a plan cannot be worked. Each has its words in shared/words. */
export type PlanFault =
  | 'noGate' | 'verdictFromElsewhere' | 'characteristicsElsewhere' | 'noCharacteristic' | 'nobodyMayWork' | 'twice' | 'otherSubject'
  | 'pressLimitsNotForLot' | 'everyPieceWorkedOut' | 'noLimit' | 'limitsCrossed' | 'plausibleEmpty' | 'guardedWorkedOut' | 'guardFactor' | 'codeTwice' | 'worstNotOnScale'
  | 'attributesNotForLot' | 'noAql' | 'attributesAql' | 'classWithoutAql' | 'variablesNotForLot' | 'variablesAql' | 'fixedTooFew' | 'barrelsElsewhere'
  | 'nonconformitiesAql' | 'skipLotCritical' | 'skipLotNumbers' | 'ownTable' | 'limitingQuality' | 'riskPoints' | 'noDesign' | 'variablesSides' | 'variablesForm'
  | 'craterLayers' | 'layerOfCrater' | 'saturationEntry' | 'positionsElsewhere' | 'weighingNotForLot' | 'intervalNotForLot' | 'tooFewDecimals' | 'logNotForFurnace' | 'noThicknessLimits';
