import { SectionMark } from "../parts/section-mark.tsx";
import { useMedia } from "../parts/use-size.ts";
import { BorrowedBar } from "./borrowed-bar.tsx";
import { ChordField } from "./chord-field.tsx";
import { DynamicPick } from "./dynamic-pick.tsx";
import { FieldProblems } from "./field-problem.tsx";
import { LineUpPick } from "./line-up-pick.tsx";
import { LineUpSheet } from "./line-up-sheet.tsx";
import { MelodyField } from "./melody-field.tsx";
import { RulesSheet } from "./rules-sheet.tsx";
import { BassSwitch, StripTools } from "./strip-tools.tsx";
import { Tones } from "./tones.tsx";

/** What is asked: chord, melody, dynamic, line-up, tones and rules. */
export function QuestionStrip() {
  const isSmall = useMedia("(max-width: 767px)");
  return (
    <header className="strip" aria-label="Question">
      <div className="strip-row">
        <div className="strip-part strip-ask">
          <Brand />
          <ChordField />
          <MelodyField />
          <DynamicPick />
        </div>
        <div className="strip-part strip-band">
          <div className="line-up-block">
            <LineUpPick />
            {!isSmall && <LineUpSheet />}
          </div>
          <Tones />
        </div>
        <StripTools>
          {isSmall && <LineUpSheet />}
          <RulesSheet />
          <BassSwitch />
        </StripTools>
      </div>
      <FieldProblems />
      <BorrowedBar />
    </header>
  );
}

/** The name of the page and its sign. */
export function Brand() {
  return (
    <div className="brand">
      <svg width="34" height="34" viewBox="0 0 34 34" aria-hidden="true">
        <path className="brand-threads" d="M0,8.5H34M0,17H34M0,25.5H34" />
        <SectionMark section="trumpets" x={7} y={8.5} r={4.2} />
        <SectionMark section="trombones" x={17} y={8.5} r={4.2} />
        <SectionMark section="trombones" x={17} y={17} r={4.2} />
        <SectionMark section="saxes" x={27} y={17} r={4.2} />
        <SectionMark section="trumpets" x={7} y={25.5} r={4.2} />
        <SectionMark section="saxes" x={27} y={25.5} r={4.2} />
      </svg>
      <h1 className="loud">Hornweave</h1>
    </div>
  );
}
