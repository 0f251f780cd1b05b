export type * from "./inquiry.ts";
export type * from "./phrase-work.ts";
export { firstInquiry } from "./first-inquiry.ts";
export { readInquiry, type InquiryReading } from "./read-inquiry.ts";
export { ruleTexts } from "./rule-texts.ts";
export { cellOf, reportOn, type VoicingReport } from "./report.ts";
export { referencePoints, type ReferencePoint } from "./reference-points.ts";
export { textOf } from "./text-of.ts";
export { createHistory, historyLimit, record, redo, undo, type History } from "./history.ts";
export { bestOfCell, searchSteps, voicingOfCell, whyEmpty } from "./search-steps.ts";
export { unwritten, type Unwritten } from "./unwritten.ts";
export type * from "./lesson-types.ts";
export { lessonParts } from "./lesson.ts";
export {
  ideaValue,
  isSameStack,
  lessonTextures,
  notShared,
  voicingOfTexture,
} from "./lesson-textures.ts";
export type * from "./quiz-types.ts";
export { quizRules, type QuizRule, type QuizTolerance } from "./quiz-table.ts";
export { pairMargin, quizDeck } from "./quiz-pairs.ts";
export {
  answerTurn,
  ideasOf,
  questionOf,
  quizStart,
  startRound,
  type QuizBefore,
  type QuizQuestion,
} from "./quiz-round.ts";
