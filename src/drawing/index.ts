export type * from "./drawing-types.ts";
export { drawFigure, type Figure, type FigurePart } from "./draw-figure.ts";
export { drawStaves } from "./draw-staves.ts";
export { loadMusicFonts } from "./music-fonts.ts";
export { variableTheme, type MarkColours, type StaffTheme } from "./staff-theme.ts";
export { drawPhraseSystem, type DrawnSystem, type PhrasePoint } from "./draw-phrase.ts";
export { systemsOf, type SystemBars } from "./phrase-system-plan.ts";
export { drawPhraseFigure } from "./draw-phrase-figure.ts";
