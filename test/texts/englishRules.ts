/* What each rule of an input wants in English, collected from the modules: the type says that none is missing. */
import type { InputRuleTexts } from "../../src/core/errorRules.js";
import { withinLifeText } from "../../src/age/text.js";
import { familyText, heldText } from "../../src/bath/text.js";
import {
  agentText,
  coffeeText,
  dryText,
  labelText,
  noGradesText,
  notCausticText,
  notTabletsText,
  unfitText,
} from "../../src/brew/refusedText.js";
import { asLearnedText } from "../../src/compensate/text.js";
import {
  beforePointText,
  belowTopText,
  betweenText,
  curveReachesText,
  curveRisesText,
  outerArcText,
  pointsAllSdText,
  pointsBendText,
  pointsCarryText,
  pointsDifferText,
  pointsRiseText,
  speedPointText,
  stepsDifferText,
} from "../../src/contrast/text.js";
import {
  enoughText,
  inOrderText,
  jsonText,
  onceText,
  knownFieldText,
  newerText,
  plainText,
  risingText,
  rowsSlowerText,
  slowingText,
  spreadText,
} from "../../src/core/text.js";
import { exponentText, partsOrTotalText } from "../../src/dilution/text.js";
import { freezingText, reachText, reachedText, smoothText, untoldText } from "../../src/drift/refusedText.js";
import { noPlaceText, samePriorText, toldApartText } from "../../src/learning/text.js";
import {
  idOfRowText,
  oneColumnText,
  otherRunText,
  overOrUnderText,
  subjectText,
} from "../../src/notes/text.js";
import { nameText } from "../../src/picture/text.js";
import { agitationsText, leftOutText } from "../../src/process/text.js";
import { below60Text, notAfterText, sidesText } from "../../src/quantities/text.js";
import { energyText, notFahrenheitText } from "../../src/temperature/text.js";
import { volumeNeededText } from "../../src/use/text.js";

export const englishRules: InputRuleTexts = {
  "agent-needed": agentText,
  "agitations-at-most": agitationsText,
  "as-learned": asLearnedText,
  "before-first-point": beforePointText,
  "below-60": below60Text,
  "below-held": heldText,
  "below-top": belowTopText,
  "between-once-and-twice": betweenText,
  "coffee-per-ml": coffeeText,
  "curve-outer-arc": outerArcText,
  "curve-reaches": curveReachesText,
  "curve-rises": curveRisesText,
  "curve-speed-point": speedPointText,
  "dry-per-ml": dryText,
  "energy-at-most": energyText,
  "enough-without": enoughText,
  "exponent-at-most": exponentText,
  "family-or-least": familyText,
  "fit-for-bath": unfitText,
  "id-of-one-run": idOfRowText,
  "in-order": inOrderText,
  "json": jsonText,
  "once": onceText,
  "known-field": knownFieldText,
  "known-version": newerText,
  "label-needed": labelText,
  "left-out-beside": leftOutText,
  "name": nameText,
  "no-grades": noGradesText,
  "not-after": notAfterText,
  "not-fahrenheit": notFahrenheitText,
  "not-freezing": freezingText,
  "not-tablets": notTabletsText,
  "not-caustic": notCausticText,
  "one-column": oneColumnText,
  "other-run": otherRunText,
  "over-or-under": overOrUnderText,
  "place-in-model": noPlaceText,
  "plain-data": plainText,
  "points-all-sd": pointsAllSdText,
  "points-bend": pointsBendText,
  "points-carry": pointsCarryText,
  "points-differ": pointsDifferText,
  "points-rise": pointsRiseText,
  "process-or-subject": subjectText,
  "reached-by": reachedText,
  "rising": risingText,
  "rows-slower": rowsSlowerText,
  "same-prior": samePriorText,
  "sides-at-most": sidesText,
  "slowing-at-most": slowingText,
  "smooth": smoothText,
  "spread-at-most": spreadText,
  "steps-differ": stepsDifferText,
  "tells-time-constant": untoldText,
  "told-apart": toldApartText,
  "parts-or-total": partsOrTotalText,
  "volume-needed": volumeNeededText,
  "within-life": withinLifeText,
  "within-reach": reachText,
};
