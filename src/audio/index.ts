export * from "./audio-units.ts";
export * from "./sound-plan-types.ts";
export * from "./plan-options.ts";
export { bandTimbre } from "./timbre.ts";
export type { Timbre } from "./timbre.ts";
export { planVoicing } from "./plan-voicing.ts";
export { plansInTurn, TURN_GAP_SECONDS, type Turn } from "./plans-in-turn.ts";
export { planPhrase, type PhraseSound, type PhraseSoundOptions } from "./plan-phrase.ts";
export { usualCountIn } from "./count-in.ts";
export { positionIn, type PhrasePosition, type PhraseTimeline } from "./phrase-timeline.ts";
export { planLoudness } from "./plan-loudness.ts";
export { usualSeats } from "./seating.ts";
export { moveSeat, type SeatChange } from "./move-seat.ts";
export { SEAT_LIMITS } from "./stage-table.ts";
export { NoteMaker } from "./note-maker.ts";
export { NoteCache, CACHE_BUDGET_BYTES } from "./note-cache.ts";
export { renderBlocks, renderPlan, BLOCK_FRAMES } from "./render-plan.ts";
export type { RenderOptions, RenderedBlock, RenderedSound } from "./render-plan.ts";
export { TruePeakLimiter, limited, CEILING_DB_TP } from "./limiter.ts";
export { truePeak } from "./true-peak.ts";
export { LoudnessMeter, integratedLoudness } from "./loudness-meter.ts";
export { levelMatchGain, MATCH_TARGET_LUFS } from "./level-match.ts";
export {
  dbToGain,
  gainToDb,
  dbSplToPeak,
  peakToDbSpl,
  FULL_SCALE_DB_SPL,
} from "./level-calibration.ts";
