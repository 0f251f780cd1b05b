export type * from "./inquiry.ts";
export { firstInquiry } from "./first-inquiry.ts";
export { readInquiry, type InquiryReading } from "./read-inquiry.ts";
export { ruleTexts } from "./rule-texts.ts";
export { cellOf, reportOn, type VoicingReport } from "./report.ts";
export { referencePoints, type ReferencePoint } from "./reference-points.ts";
export { textOf } from "./text-of.ts";
export { createHistory, historyLimit, record, redo, undo, type History } from "./history.ts";
export { bestOfCell, searchSteps, voicingOfCell, whyEmpty } from "./search-steps.ts";
