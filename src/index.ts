/**
 * darkroom-kinetics: how long to develop now. Pure functions over plain data, grouped by module.
 *
 * @packageDocumentation
 */

// core: what every answer is made of
export type { Caution, CautionSeverity } from "./core/caution.js";
export type { CautionData, UnusualReason } from "./core/cautionData.js";
export type { CautionFacts, CautionSentences, CautionTexts, TemperatureUnit } from "./core/cautionTexts.js";
export { cautionCodes, type CautionCode } from "./core/cautionCodes.js";
export type { TimeEstimate } from "./core/estimate.js";
export { safetyText } from "./core/safety.js";
export type { Basis, FactorRow, LawOrigin, Seen } from "./core/term.js";

// quantities: times and temperatures in text, °F, film areas
export {
  isInputError,
  problemOf,
  inputErrorCodes,
  type CheckProblem,
  type InputError,
  type InputErrorCode,
  type ExpectedFigures,
  type InputExpected,
  type InputFormat,
  type InputType,
  type RuleExpected,
} from "./core/errors.js";
export type { CurveEnd, InputRule, InputRules, InputRuleTexts, InputWanted } from "./core/errorRules.js";
export type { MeasuredQuantity } from "./core/quantity.js";
export { parseTime } from "./quantities/parseTime.js";
export { formatTime } from "./quantities/formatTime.js";
export { roundTime } from "./quantities/roundTime.js";
export {
  roundEstimate,
  type RoundedEstimate,
  type RoundEstimateOptions,
} from "./quantities/roundEstimate.js";
export { parseSpread } from "./quantities/parseSpread.js";
export { formatSpread } from "./quantities/formatSpread.js";
export { fahrenheitToCelsius } from "./quantities/fahrenheitToCelsius.js";
export { celsiusToFahrenheit } from "./quantities/celsiusToFahrenheit.js";
export { parseTemperature, type TemperatureUnitOptions } from "./quantities/parseTemperature.js";
export { formatTemperature } from "./quantities/formatTemperature.js";
export { parseCount } from "./quantities/parseCount.js";
export { parseVolume } from "./quantities/parseVolume.js";
export { filmAreaCm2 } from "./quantities/filmAreaCm2.js";
export { formatFilmArea } from "./quantities/formatFilmArea.js";
export { parseFilmFormat, type FilmFormat } from "./quantities/parseFilmFormat.js";

// temperature: time at another temperature
export type { ArrheniusLaw, CoefficientLaw, TemperatureLaw, TemperatureRow } from "./temperature/law.js";
export { temperatureFactor } from "./temperature/temperatureFactor.js";
export { rateFunction } from "./temperature/rateFunction.js";
export { temperatureCoefficient } from "./temperature/temperatureCoefficient.js";
export { asArrheniusLaw } from "./temperature/asArrheniusLaw.js";
export { asCoefficientLaw } from "./temperature/asCoefficientLaw.js";
export {
  fitTemperatureLaw,
  type FitTemperatureLawOptions,
  type FittedTemperatureLaw,
} from "./temperature/fitTemperatureLaw.js";
export { handbookDevelopers, type HandbookDeveloper } from "./handbook/temperature.js";
export { handbookTemperatureLaw, type HandbookTemperatureLaw } from "./temperature/handbookTemperatureLaw.js";
export { genericTemperatureLaw } from "./temperature/genericTemperatureLaw.js";
export { temperatureCautions, type TemperatureCautionOptions } from "./temperature/temperatureCautions.js";

// drift: a bath that does not hold its temperature
export type { TemperatureForecast, TemperatureLog, TemperatureReading } from "./drift/log.js";
export { equivalentTime } from "./drift/equivalentTime.js";
export type { TemperatureCourse } from "./drift/course.js";
export { newtonDrift, type NewtonDrift } from "./drift/newtonDrift.js";
export { fitDrift, type FitDriftOptions, type FittedDrift } from "./drift/fitDrift.js";
export { developUntil, type DevelopUntilOptions } from "./drift/developUntil.js";
export { remainingTime, type RemainingTime, type RemainingTimeOptions } from "./drift/remainingTime.js";
export {
  startTemperatureFor,
  type StartTemperature,
  type StartTemperatureOptions,
} from "./drift/startTemperatureFor.js";
export { ownUseFactor, type OwnUse } from "./drift/ownUse.js";
export { logCautions } from "./drift/logCautions.js";
export { driftVessels, type DriftVessel, type HandbookVessel } from "./handbook/vessels.js";
export { handbookVessel } from "./drift/handbookVessel.js";

// dilution: notation, volumes, time at another strength
export type { Dilution, DilutionLaw, DilutionRow, PowerDilutionLaw } from "./dilution/dilution.js";
export { parseDilution, type ParseDilutionOptions } from "./dilution/parseDilution.js";
export { formatDilution } from "./dilution/formatDilution.js";
export { mixVolumes, type MixedVolumes } from "./dilution/mixVolumes.js";
export { dilutionFactor } from "./dilution/dilutionFactor.js";
export {
  fitDilutionLaw,
  type FitDilutionLawOptions,
  type FittedDilutionLaw,
} from "./dilution/fitDilutionLaw.js";
export { dilutionFamilies, leastStockFamilies, type DilutionFamily } from "./handbook/dilution.js";
export { handbookDilutionLaw, type HandbookDilutionLaw } from "./dilution/handbookDilutionLaw.js";
export { genericDilutionLaw } from "./dilution/genericDilutionLaw.js";
export { stockCautions, type StockQuestion } from "./bath/stockCautions.js";

// agitation: time under another agitation
export { genericAgitationLaw, type Agitation, type AgitationLaw } from "./agitation/agitation.js";
export { parseAgitation } from "./agitation/parseAgitation.js";
export { agitationFactor } from "./agitation/agitationFactor.js";

// exhaustion: time in a used or old bath, and whether to use it at all
export { genericUseLaw, useFactor, type UseLaw } from "./use/useFactor.js";
export { parseUse, type ParseUseOptions } from "./use/parseUse.js";
export { ageFactor } from "./age/ageFactor.js";
export type { AgeLaw } from "./age/law.js";
export { genericAgeLaw } from "./age/genericAgeLaw.js";
export { parseAge } from "./age/parseAge.js";
export { bathCapacity } from "./bath/bathCapacity.js";
export type { BathCapacity, CapacityBath } from "./bath/capacityOf.js";
export type { CapacityBasis, CapacityLimit } from "./bath/capacityLimits.js";
export type { DeveloperBath } from "./bath/judgeBath.js";
export { bathState } from "./bath/bathState.js";
export { bathVolumeMl } from "./bath/bathVolumeMl.js";
export { checkLedger, type CheckedLedger } from "./bath/checkLedger.js";
export type { BathLedger, LedgerVolume } from "./bath/ledger.js";
export { bathVerdict, type BathVerdict, type VerdictBath } from "./bath/bathVerdict.js";
export { handbookUseLaw } from "./use/handbookUseLaw.js";
export { replenishmentMl } from "./bath/replenishmentMl.js";
export {
  handbookKeeping,
  handbookReplenishment,
  useDevelopers,
  type HandbookUse,
  type KeepingLimit,
  type KeepingStorage,
  type UseDeveloper,
} from "./handbook/use.js";

// contrast: time for a wanted gradient
export type { GrowthCorrelation, GrowthLaw, GrowthSpread } from "./contrast/growth.js";
export { gammaAt } from "./contrast/gammaAt.js";
export { timeForGamma } from "./contrast/timeForGamma.js";
export { genericGrowthLaw } from "./contrast/genericGrowthLaw.js";
export {
  fitGrowth,
  type FitGrowthOptions,
  type FittedGrowth,
  type GrowthPoint,
} from "./contrast/fitGrowth.js";
export { growthFromDoubling, type DoublingPair } from "./contrast/growthFromDoubling.js";
export { parseStops } from "./push/parseStops.js";
export { pushFactor } from "./push/pushFactor.js";
export { pushCautions } from "./push/pushCautions.js";
export type { CharacteristicCurve, DensityStep } from "./contrast/sensitometry.js";
export { speedPoint, type SpeedPoint } from "./contrast/speedPoint.js";
export { averageGradient } from "./contrast/averageGradient.js";
export { isoSpeed, type IsoSpeed } from "./contrast/isoSpeed.js";
export { contrastIndex } from "./contrast/contrastIndex.js";

// inspection: the image as the clock
export { appearanceFactor } from "./inspection/appearanceFactor.js";
export { timeFromAppearance } from "./inspection/timeFromAppearance.js";
export { mixedAppearanceFactor, type AppearancePart } from "./inspection/mixedAppearanceFactor.js";
export { appearanceAgents, type AppearanceAgent } from "./handbook/appearance.js";
export {
  handbookAppearanceFactor,
  type AppearanceFactorOptions,
  type PublishedFactor,
} from "./inspection/handbookAppearanceFactor.js";
export { appearanceEstimate, type AppearanceSeen } from "./inspection/appearanceEstimate.js";
export { combineEstimates, type CombinedEstimate } from "./inspection/combineEstimates.js";
export { safelightCautions, sensitizations, type Sensitization } from "./inspection/safelightCautions.js";

// brew: groceries into a bath of known make-up
export {
  handbookIngredients,
  type HandbookRange,
  type Ingredient,
  type IngredientData,
  type IngredientHazard,
  type IngredientMoles,
} from "./handbook/ingredients.js";
export type { DeveloperBrew, BrewPart, SpoonHeap, TabletPart, WeighedPart } from "./brew/brew.js";
export {
  massOf,
  spoonSizesMl,
  type MassOfInput,
  type SpoonedMass,
  type SpoonOptions,
} from "./brew/massOf.js";
export { spoonsFor, type RoundedSpoons, type SpoonsForInput } from "./brew/spoonsFor.js";
export { sodaMass, type SodaHydrate, type SodaMassInput } from "./brew/sodaMass.js";
export { bakeYield, type BakeYield } from "./brew/bakeYield.js";
export { bakeProgress, type BakeProgress } from "./brew/bakeProgress.js";
export { bakedSoda } from "./brew/bakedSoda.js";
export { bakeTime, type BakeTime, type BakeTimeInput } from "./brew/bakeTime.js";
export { solubility } from "./brew/solubility.js";
export { brewPh, type BrewPh } from "./brew/brewPh.js";
export { genericStrengthLaw, type StrengthLaw } from "./brew/strengthLaw.js";
export { brewStrength, type BrewStrength, type BrewStrengthOptions } from "./brew/brewStrength.js";
export { checkBrew, type BrewUse } from "./brew/checkBrew.js";
export {
  strengthFromScrap,
  type ScrapInput,
  type ScrapSeen,
  type ScrapStrength,
} from "./brew/strengthFromScrap.js";
export { brewLife, type BrewLife, type BrewLifeOptions } from "./brew/brewLife.js";
export {
  brewCapacity,
  type BrewCapacity,
  type BrewCapacityOptions,
  brewMaterials,
  type BrewMaterial,
} from "./brew/brewCapacity.js";
export { proposeBrew, type ProposalInput, type ProposedBrew } from "./brew/proposeBrew.js";
export type { NoBrew, NoBrewReason } from "./brew/noBrew.js";
export type { SpoonedAmount } from "./brew/measured.js";
export type { StartingTime } from "./brew/startingTime.js";
export type { ShelfItem } from "./brew/shelf.js";
export { roundSpoons } from "./brew/roundSpoons.js";
export { scaleBrew } from "./brew/scaleBrew.js";
export { mixingSteps, type MixingStep, type MixingWord } from "./brew/mixingSteps.js";
export type { MixingStepData } from "./brew/mixingText.js";
export { describeMixing } from "./text/describeMixing.js";
export type { MixingTexts } from "./text/mixingTexts.js";

// compensate: the main job
export type {
  Baseline,
  Compensation,
  Conditions,
  Factor,
  FactorCause,
  Knowledge,
} from "./compensate/types.js";
export { compensate } from "./compensate/compensate.js";
export {
  prepareCompensation,
  type ConditionColumns,
  type PreparedCompensation,
} from "./compensate/prepareCompensation.js";
export { checkConditions, type ConditionsCheck } from "./compensate/checkConditions.js";
export { effect, type EffectArguments, type EffectOfCause } from "./compensate/effect.js";
export type { DocumentProblem } from "./core/schemaWords.js";
export { causeNames, type CauseName } from "./causes.js";
export type { LearnedBrew, Strength, StrengthCorrection } from "./strength/cause.js";
export type { PushLaw } from "./push/law.js";
export { genericPushLaw } from "./push/law.js";
export { contrastFactor } from "./contrast/contrastFactor.js";
export type { JointSpread, LearnedOffset } from "./compensate/joint.js";
export { genericInteractionLaw, type InteractionLaw } from "./interaction/law.js";
export type { PairName } from "./pairs.js";
export type { Departure } from "./core/departures.js";
export {
  temperatureCurve,
  type TemperatureCurveOptions,
  type TemperatureCurvePoint,
} from "./compensate/temperatureCurve.js";

// learning: runs into knowledge, the next test
export type {
  LearnedKnowledge,
  RunOutcome,
  LearnedParameter,
  KnowledgePrior,
  DevelopmentRun,
  SetAside,
  SetAsideReason,
  TestCandidate,
} from "./learning/types.js";
export { startKnowledge, type StartOptions } from "./learning/startKnowledge.js";
export { stripOutcome, type JudgedStrip } from "./learning/stripOutcome.js";
export { learn, type LearnOptions } from "./learning/learn.js";
export { predict } from "./learning/predict.js";
export { lawsOf } from "./learning/lawsOf.js";
export { nextTest, type RankedTest } from "./learning/nextTest.js";
export { checkKnowledge, type KnowledgeCheck } from "./learning/checkKnowledge.js";
export { mergeKnowledge } from "./learning/mergeKnowledge.js";
export { tidyRuns, type TidyRun } from "./learning/tidyRuns.js";

// notes: a notebook as people write it into runs
export {
  readRunNotes,
  type RejectedNote,
  type RunNotes,
  type RunNotesOptions,
  type UnreadNote,
} from "./notes/readRunNotes.js";
export { tableRecords } from "./notes/tableRecords.js";
export type { OnlyNamed } from "./notes/names.js";
export { parseDate, type ParseDateOptions } from "./notes/parseDate.js";
export { parseOutcome } from "./notes/parseOutcome.js";

// process: the plan from pour-in to wash
export type {
  BathSetting,
  PlanCue,
  CueAction,
  CueData,
  FixSetting,
  Handling,
  PlanMoment,
  ProcessBaths,
  ProcessInput,
  ProcessMaterial,
  ProcessMaterialFacts,
  ProcessMaterialName,
  PlannedDeveloper,
  ProcessPlan,
  ProcessStep,
  StepName,
  StopSetting,
  WashSetting,
} from "./process/types.js";
export {
  fixerKinds,
  movements,
  paperBases,
  stopKinds,
  vessels,
  washMethods,
  type FixerKind,
  type ProcessMovement,
  type PaperBase,
  type StopKind,
  type ProcessVessel,
  type WashMethod,
} from "./handbook/process.js";
export { planProcess } from "./process/planProcess.js";
export { checkPlan, type PlanCheck } from "./process/checkPlan.js";
export { planAt, type PlanAtOptions } from "./process/planAt.js";
export { usualVessel } from "./process/usualVessel.js";
export { planEvening } from "./process/planEvening.js";
export type { EveningInput, EveningPlan, EveningPlate, EveningPlateInput } from "./process/eveningTypes.js";
export { replaceDevelopment, type DevelopmentLeft } from "./process/replaceDevelopment.js";
export {
  testStripTimes,
  type TestStrip,
  type TestStripOptions,
  type TestStripReason,
} from "./process/testStripTimes.js";
export { fixingTime, type FixingQuestion } from "./process/fixingTime.js";
export { clearingTimeAt, type ClearingQuestion } from "./process/clearingTimeAt.js";
export { bathCautions, type BathQuestion } from "./process/bathCautions.js";
export type { CuePlace } from "./process/text.js";
export type { PlanTexts } from "./text/planTexts.js";
export { describePlan } from "./text/describePlan.js";
export type { EveningTexts } from "./text/eveningTexts.js";
export { describeEvening } from "./text/describeEvening.js";

// steering: a development in progress
export type {
  EquivalentWork,
  SteerAnswer,
  SteerInput,
  SteeringReading,
  SteeringSurroundings,
  SteeringVessel,
} from "./steering/types.js";
export { steer } from "./steering/steer.js";
export { followedStepS, steeringGoal, type SteeringGoalOptions } from "./steering/steeringGoal.js";
export { judgeReading, type JudgedReading, type JudgeReadingOptions } from "./steering/judgeReading.js";
export { checkLog, type LogCheck } from "./steering/checkLog.js";
export type { SteeringTexts } from "./text/steeringTexts.js";
export { describeSteering, type DescribeSteeringOptions } from "./text/describeSteering.js";

// recipe: a written recipe, checked
export type {
  RecipeBrew,
  Recipe,
  RecipeBaseline,
  RecipeCheck,
  RecipeConditions,
  RecipeMaterial,
  RecipeProblem,
  RecipeStock,
} from "./recipe/types.js";
export type { JsonSchema } from "./core/schema.js";
export { checkRecipe } from "./recipe/checkRecipe.js";
export { recipeSchema } from "./recipe/recipeSchema.js";
export {
  recipeStandardSchema,
  type RecipeStandardSchema,
  type StandardIssue,
  type StandardProps,
  type StandardResult,
} from "./recipe/recipeStandardSchema.js";
export { formatRecipe } from "./recipe/formatRecipe.js";
export { compensateRecipe } from "./recipe/compensateRecipe.js";
export { learnRecipe } from "./recipe/learnRecipe.js";
export { planRecipe, type RecipePlanOptions } from "./recipe/planRecipe.js";
export { recipeQuestion, type RecipeQuestion } from "./recipe/recipeQuestion.js";
export { describeCompensation } from "./text/describeCompensation.js";
export { describeFactor } from "./text/describeFactor.js";
export type { AnswerTexts } from "./text/answerTexts.js";
export type { Texts } from "./texts/texts.js";
export { describeCaution } from "./text/describeCaution.js";
export { describeCautions } from "./text/describeCautions.js";
export { describeProblem } from "./text/describeProblem.js";
export { describeProblems } from "./text/describeProblems.js";
export { problemTexts, type InputProblem, type ProblemTexts } from "./text/problemTexts.js";

// picture: an answer as one drawing, with its ladder
export type {
  AnswerPicture,
  AnswerPictureInput,
  PictureAxes,
  PictureDot,
  PicturePoint,
  PictureRange,
  PictureRefusal,
  PictureRung,
  PictureWarning,
  PictureToday,
} from "./picture/types.js";
export type {
  PictureFacts,
  PictureLimitFacts,
  PictureMoment,
  PictureRungWords,
  PictureTexts,
  PictureTodayFacts,
} from "./picture/text.js";
export { answerPicture } from "./picture/answerPicture.js";
export { pictureAfterStrip } from "./picture/pictureAfterStrip.js";
export { recipePicture } from "./picture/recipePicture.js";
export { pictureSvg } from "./picture/pictureSvg.js";
export type {
  PictureEdges,
  PictureLayout,
  PicturePart,
  PictureRungEdges,
  PictureStripBox,
  PictureSvgOptions,
} from "./picture/options.js";
export { pictureLayout } from "./picture/pictureLayout.js";
export { describePicture, type PictureWordOptions } from "./picture/describePicture.js";
export type { PictureWords } from "./picture/words.js";

// chart: times over temperature and dilution, for the wall
export type { ChartAxes, TimeChart, TimeChartHeld, TimeChartInput, TimeChartRow } from "./chart/types.js";
export type { ChartTexts } from "./chart/text.js";
export { timeChart } from "./chart/timeChart.js";
export { chartRecipe } from "./chart/chartRecipe.js";
export { describeChart } from "./chart/describeChart.js";
export { chartSvg, type ChartSvgOptions } from "./chart/chartSvg.js";
export { chartCsv } from "./chart/chartCsv.js";
