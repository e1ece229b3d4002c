/* The English sentence of every caution, collected from the modules: the type says that none is missing. */
import { agitationSentences } from "../../src/agitation/text.js";
import { bathSentences } from "../../src/bath/text.js";
import { limitSentences } from "../../src/bath/limitText.js";
import { brewSentences } from "../../src/brew/text.js";
import { compensateSentences } from "../../src/compensate/text.js";
import { isoContrastSentence, nearLimitSentence } from "../../src/contrast/text.js";
import type { CautionSentences } from "../../src/core/cautionTexts.js";
import {
  farSentence,
  mayFailSentence,
  outsideTableSentence,
  unknownFieldSentence,
  wrongWaySentence,
} from "../../src/core/text.js";
import { driftSentences } from "../../src/drift/text.js";
import { disagreeSentence, safelightSentences, strengthOutsideSentence } from "../../src/inspection/text.js";
import { learningSentences } from "../../src/learning/text.js";
import { eveningSentences } from "../../src/process/eveningText.js";
import { processSentences } from "../../src/process/text.js";
import { notesSentences } from "../../src/notes/text.js";
import { pushSentences } from "../../src/push/text.js";
import { readingSentences } from "../../src/steering/text.js";
import { temperatureSentences } from "../../src/temperature/text.js";
import { pastCapacitySentence } from "../../src/use/text.js";

export const englishSentences: CautionSentences = {
  ...agitationSentences,
  ...bathSentences,
  ...brewSentences,
  ...compensateSentences,
  ...disagreeSentence,
  ...driftSentences,
  ...eveningSentences,
  ...farSentence,
  ...isoContrastSentence,
  ...learningSentences,
  ...limitSentences,
  ...mayFailSentence,
  ...notesSentences,
  ...nearLimitSentence,
  ...outsideTableSentence,
  ...pastCapacitySentence,
  ...processSentences,
  ...pushSentences,
  ...readingSentences,
  ...safelightSentences,
  ...strengthOutsideSentence,
  ...temperatureSentences,
  ...unknownFieldSentence,
  ...wrongWaySentence,
};
