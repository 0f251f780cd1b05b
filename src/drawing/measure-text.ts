import { Element as MusicElement } from "vexflow/core";

/** Measures a text in the drawing's own text font. */
export type MeasureText = (text: string) => number;

/**
 * How wide text will be, in the font that the drawing inherits from the page.
 * @param container - where the drawing goes
 * @param sizePx - font size in CSS pixels
 * @returns a function from text to width in CSS pixels; an estimate where nothing can measure
 */
export function textMeasure(container: HTMLElement, sizePx: number): MeasureText {
  const family = getComputedStyle(container).fontFamily || "sans-serif";
  const context = MusicElement.getTextMeasurementCanvas()?.getContext("2d");
  if (!context) return (text) => text.length * sizePx * 0.58;
  return (text) => {
    context.font = `${sizePx}px ${family}`;
    return context.measureText(text).width;
  };
}
