import { askPatterns, askWords as texts } from '../../sim/words/en.ts';

/**
 * The one file of words: how people say what the bench has a name for, in the workshops of several
 * countries and by slips that are common. Each row: the bench's term, then what is meant by it; several
 * words are one phrase. Which words are used where is common knowledge of the trade and was gathered
 * from public threads, words only. A word of several meanings stands in a phrase, never alone.
 */
const rows: readonly (readonly [term: string, said: string])[] = [
  // The brake and its parts
  ['drum', texts.drumDrumsBrakeDrumDrum],
  ['bore', texts.boreInsideDiameterInnerDiameter],
  ['face', texts.sweptFaceBrakingSurfaceFriction],
  ['lip', texts.lipRidgeWearRidgeRust],
  ['plate', texts.backingPlateBackplateBack],
  ['hole', texts.accessHoleInspectionHoleAdjusting],
  ['hub', texts.hubBossSpigotRegisterMating],
  ['fastening', texts.retainingScrewLocatingScrew],
  ['jackscrew', texts.jackingHoleThreadedHoleExtractor],
  ['bearing', texts.bearingWheelBearingHubBearing],
  ['shoe', texts.shoeShoesBrakeShoeShoe],
  ['lining', texts.liningLiningsLinerBrakeLiner],
  ['table', texts.shoeTablePlatformShoeFrame],
  ['leading', texts.leadingLeedingSelfEnergising],
  ['trailing', texts.trailingRecedingRearFacing],
  ['arc', texts.arcedArcArcdRadiusedGround],
  ['anchor', texts.anchorPinAnchorPivotPost],
  ['abutment', texts.abutmentAnchorBlockBottom],
  ['spring', texts.springSpringsReturnSpring],
  ['holddown', texts.holdDownSteadySpringSteady],
  ['pads', texts.raisedPadLandLandsLedge],
  ['cylinder', texts.wheelCylinderWheelCylSlave],
  ['piston', texts.pistonPistonsPlungerBucket],
  ['seal', texts.sealSealsCupSealRubbers],
  ['nipple', texts.bleedNippleBleedScrewBleeder],
  ['fluid', texts.brakeFluidFluidBrakeOil],
  ['hose', texts.hoseFlexiFlexiHoseFlexible],
  ['master', texts.masterCylinderMasterMC],
  ['adjuster', texts.adjusterAdjustersSelfAdjuster],
  ['strut', texts.strutSpreaderBarSpreaderPush],
  ['pawl', texts.toothedLeverPawlPallPaul],
  ['tooth', texts.toothTeethTheethSerration],
  ['star', texts.starWheelStarStarwheelStar],
  ['screw', texts.screwStrutThreadedRodAdjuster],
  ['wedge', texts.wedgeAdjustingKeySlidingWedge],
  ['hotlock', texts.hotLockBimetalBiMetal],
  ['slot', texts.lostMotionSlotPlayEnd],
  ['backoff', texts.backOffBackItOff],
  ['takeup', texts.takeUpTakesUpTighten],
  ['preset', texts.shoeGaugeSettingGaugeDrum],
  ['centre', texts.centraliseCentralizeCentring],
  ['clearance', texts.clearanceGapRunningClearance],
  ['overadjusted', texts.overAdjustedOveradjustedOver],
  // Parking
  ['handbrake', texts.handbrakeHandBrakeParking],
  ['lever', texts.handLeverLeverHandleLeaver],
  ['notch', texts.notchNotchesHandbrakeClick],
  ['roof', texts.pullsUpToTheRoof],
  ['parkinglever', texts.parkingLeverHandbrakeArmLever],
  ['stop', texts.offItsStopLeverStop],
  ['cable', texts.cableCablesHandbrakeCable],
  ['slack', texts.slackLooseFloppyBaggyNo],
  ['equaliser', texts.equaliserEqualizerCompensator],
  ['hold', texts.holdHoldsHoldingGripGrips],
  ['not_hold', texts.notCatchingWontCatchNot],
  ['crooked', texts.crookedAskewTiltedAtAn],
  ['creep', texts.rollsRollsAwayRollAway],
  ['slope', texts.slopeHillInclineGradientGrade],
  // The pedal
  ['pedal', texts.pedalBrakePedalPeddlePetal],
  ['long', texts.longPedalLowPedalPedal],
  ['soft', texts.spongySpungySoftSpringyMushy],
  ['hard', texts.woodenHardPedalRockHard],
  ['sink', texts.sinksSinkingDropsSlowlyCreeps],
  ['throb', texts.pulsingPulsatesPulsatePulsation],
  ['pump', texts.pumpPumpedPumpingPumpIt],
  ['press', texts.pressPushStepOnStamp],
  // How it brakes
  ['grab', texts.grabGrabsGrabbyBitesSnatch],
  ['weak', texts.weakPoorNoBrakesLow],
  ['pull', texts.pullsLeftPullsRightPulls],
  ['drag', texts.dragDragsDraggingBindingBinds],
  ['wontturn', texts.lockedLockedOnLockedUp],
  ['seized', texts.seizedSiezedSeazedCeasedRusted],
  ['freeup', texts.wearFreeWearsFreeFree],
  ['wearrate', texts.howLongWillTheyLast],
  // Noises
  ['squeal', texts.squealSqueakScreechChirpWhistle],
  ['grind', texts.grindGrindingGratingGraunching],
  ['groan', texts.groanMoanCreakHonkHum],
  ['clunk', texts.clunkClonkKnockThudBang],
  ['swish', texts.swishShhWhooshWuhWuh],
  ['twice', texts.twiceATurnTwicePer],
  ['noise', texts.noiseNoisySoundVoiceRacket],
  ['rattle', texts.rattleRattlesRattlingTinkle],
  // Heat, wet, smell
  ['hot', texts.hotBoilingScorchingRedHot],
  ['smell', texts.smellSmellsBurningBurntStinks],
  ['fade', texts.fadeFadesGoesAwayOn],
  ['wet', texts.wetRainRainyWaterPuddle],
  ['damp', texts.dampHumidMorningMorningsOvernight],
  ['leak', texts.leakLeaksWeepingSeepingDripping],
  ['huboil', texts.gearOilDiffOilAxle],
  ['rustbond', texts.rustedOnRustedToThe],
  ['rust', texts.rustRustyCorrodedCorrosion],
  // Wear and measuring
  ['worn', texts.wornWearThinFinishedGone],
  ['limit', texts.limitMaximumDiameterMaxDia],
  ['glazed', texts.glazedGlazeShinyPolishedGlassy],
  ['score', texts.scoreScoredGrooveGroovedScratches],
  ['oval', texts.ovalOvalityOvelOvialityEgg],
  ['offcentre', texts.offCentreOffCenterEccentric],
  ['bell', texts.taperBellMouthBellMouthed],
  ['crack', texts.crackCrackedHairlineHeatCheck],
  ['machine', texts.skimSkimmedSkimmingMachine],
  ['measure', texts.measureMeasuredVernierMicrometer],
  ['roller', texts.rollerRollersRollerTestBrake],
  ['inspection', texts.motNctDoeCvrtWof],
  // Work
  ['comeoff', texts.comeOffComeOfComes],
  ['goon', texts.halfWayOnHalfwayOn],
  ['apart', texts.takeApartStripDownDismantle],
  ['together', texts.putBackPutTogetherReassemble],
  ['fit', texts.fitFittingFittedInstallInstalled],
  ['bleed', texts.bleedBleedingBledPurgeFlush],
  ['air', texts.airAirInTheSystem],
  ['bed', texts.bedInBeddingInBedding],
  ['spin', texts.byHandSpinSpinsRotate],
  ['click', texts.clickClicksClickingTickSnick],
  ['reverse', texts.reverseReversingBackingUp],
  ['forward', texts.forwardForwardsGoingForward],
  ['oneside', texts.oneSideOneWheelOne],
  ['allwheels', texts.allFourAllWheelsAll],
  ['bothwheels', texts.bothSidesBothRearBoth],
  ['wrongside', texts.leftAndRightWrongSide],
  ['upsidedown', texts.upsideDownWrongWayRound],
  ['towing', texts.towTowingTrailerCaravanHorse],
  ['laden', texts.loadedLadenFullyLoadedHeavy],
  ['direction', texts.whichWayDirectionClockwise],
  ['howmuch', texts.howMuchHowManyHow],
  ['tool', texts.toolToolsBrakeSpoonSpoon],
  ['heatit', texts.blowtorchTorchFlameHeatGun],
  ['dust', texts.dustBrakeDustBlowOut],
  ['stand', texts.axleStandAxleStandsJack],
  ['safe', texts.safeToDriveSafeCan],
  ['servo', texts.duoServoDualServoServo],
  ['booster', texts.brakeBoosterBoosterVacuum],
  ['indisc', texts.drumInDiscDrumIn],
  ['disc', texts.discDiscsDiskDiskBrake],
  ['twinleading', texts.twinLeadingTwoLeadingTwin],
  ['kind', texts.whichKindWhatKindWhich],
  ['electric', texts.electricParkingBrakeElectronic],
  ['lamp', texts.warningLightWarningLampAbs],
  ['price', texts.priceCostHowMuchDoes],
  ['torque', texts.torqueSettingTighteningTorque],
  ['grease', texts.greaseLubricateLubeCopper],
  ['explain', texts.howDoesExplainWhatIs],
  ['photo', texts.photoPhotographPhotographs],
  ['order', texts.whichOrderWhatOrderIn],
  ['toe', texts.toeShoeTipTipOf],
  ['force', texts.forceForcesThrustNewtons],
  ['pressure', texts.pressurePsiBarOfPressure],
  ['touch', texts.touchTouchesContactMakeContact],
  ['snag', texts.thenStopsThenItStops],
  ['slid', texts.slidesOutSlidesSlidSlide],
  ['same', texts.sameSameLookAlikeLook],
  ['teach', texts.lessonClassStudentsPupils],
];

/** Words that say nothing by themselves. Particles such as on, off, up, not and no are none of them. */
const EMPTY = texts.empty;

/** Told by their neighbours alone, where nothing else is left of a question. */
const RARE = new Set(askPatterns.fold(EMPTY).split(' '));

/** Words that turn what follows them. */
export const NOT = texts.not;

/**
 * Words as they are spoken or thumbed in several countries, each with its plain spelling: from Scotland
 * and Ireland, the north of England, the south of the United States, India, and from short messages.
 */
export const SPOKEN: ReadonlyMap<string, string> = new Map(
  askPatterns
    .fold(texts.affOffOotOutDoon)
    .split(',')
    .map((pair) => {
      const [typed = '', ...rest] = pair.trim().split(/\s+/);
      return [typed, rest.join(' ')] as const;
    }),
);

/** Ordinary words of the language that are no slip of a word of the trade, though one letter parts them. */
export const PLAIN: ReadonlySet<string> = new Set(
  askPatterns.fold(texts.aboveAcrossAfterAgainAgainst).split(' '),
);

/** No slip of one is the other. */
export const NEVER_MIXED: readonly (readonly [string, string])[] = askPatterns.neverMixed;

export const synonyms: readonly {
  readonly term: string;
  readonly said: readonly string[];
}[] = rows.map(([term, said]) => ({
  term,
  said: said.split(',').map((s) => s.trim()),
}));

export const isEmpty = (word: string): boolean => RARE.has(word);
